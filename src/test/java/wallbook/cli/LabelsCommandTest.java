package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.render.PdfPages;
import wallbook.render.PdfParts;

class LabelsCommandTest {
  private static final String FLAT = "sample-jobs/flat/job.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), false, arguments);
  }

  private int labels(Path into, String... more) {
    List<String> arguments = new ArrayList<>(List.of("labels", FLAT, "--into", into.toString()));
    arguments.addAll(List.of(more));
    return run(arguments.toArray(String[]::new));
  }

  @Test
  void theLabelsNamedArePrintedFromThePositionGiven() throws IOException {
    Path file = folder.resolve("again/wraps.pdf");
    int code = labels(file, "--kind", "cable-wraps", "--start", "30", "--only", "L-01,T-01");
    assertEquals(ExitCode.CLEAN, code, err.toString());
    try (PdfParts parts = new PdfParts(Files.readAllBytes(file))) {
      assertEquals(4, parts.tagged("LI").size());
      assertEquals(2, parts.document().getNumberOfPages());
    }
    String text = PdfPages.of(Files.readAllBytes(file)).text(1);
    assertTrue(text.contains("L-01") && !text.contains("T-01") && !text.contains("L-02"), text);
  }

  @Test
  void theSheetSaysTheKind() throws IOException {
    Path file = folder.resolve("tags.pdf");
    assertEquals(ExitCode.CLEAN, labels(file, "--sheet", "tape-24-tag"));
    assertTrue(PdfPages.of(Files.readAllBytes(file)).text(2).contains("C-1"));
  }

  @Test
  void aFileOfTheSameNameIsReplacedWholeAndNothingElseStays() throws IOException {
    Path file = folder.resolve("tags.pdf");
    Files.writeString(file, "old");
    labels(file, "--kind", "conduit-tags");
    assertTrue(Files.size(file) > 1000);
    try (var files = Files.list(folder)) {
      assertEquals(List.of(file), files.toList());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "--kind cable-wraps --start 31 | the sheet a4-flag has positions 1 to 30, not 31",
        "--kind cable-wraps --start 0 | the sheet a4-flag has positions 1 to 30, not 0",
        "--kind cable-wraps --only L-1 | no label of this kind is called L-1 (did you mean L-01?)",
        "--sheet a4-flagg | there is no label sheet 'a4-flagg'; did you mean a4-flag?",
        "--sheet a4-flag --kind conduit-tags | the sheet a4-flag is for cable-wraps",
        "--kind stickers | 'stickers' is none of cable-wraps",
        "--start 2 | --kind or --sheet is wanted",
      })
  void whatCannotBeUnderstoodIsRefused(String arguments, String why) {
    Path file = folder.resolve("none.pdf");
    assertEquals(ExitCode.USAGE, labels(file, arguments.split(" ")));
    assertTrue(err.toString().contains(why), err.toString());
    assertFalse(Files.exists(file));
  }

  @Test
  void aRecordWithErrorsIsRefused() {
    assertEquals(
        ExitCode.ERRORS, run("labels", "sample-jobs/broken/job.yaml", "--kind", "conduit-tags"));
    assertFalse(Files.exists(Path.of("conduit-tags.pdf")));
  }

  /** A file of one sheet, made from one of the program's. */
  private Path ownSheet(String of, UnaryOperator<String> change) throws IOException {
    List<String> table =
        Files.readAllLines(Path.of("src/main/resources/wallbook/reference/label-sheets.csv"));
    String header = table.stream().filter(l -> l.startsWith("name,")).findFirst().orElseThrow();
    String row = table.stream().filter(l -> l.startsWith(of + ",")).findFirst().orElseThrow();
    return Files.writeString(folder.resolve("own.csv"), header + "\n" + change.apply(row) + "\n");
  }

  @Test
  void sheetsAreListedWithOnesOwnFirst() throws IOException {
    Path own = ownSheet("a4-tag", row -> row.replace("a4-tag", "our-stock"));
    assertEquals(ExitCode.CLEAN, run("labels", "--list-sheets", "--label-sheets", own.toString()));
    List<String> lines = out.toString().lines().toList();
    assertTrue(lines.get(1).startsWith("our-stock * "), lines.get(1));
    assertTrue(lines.stream().anyMatch(l -> l.startsWith("letter-flag * ")));
    Path file = folder.resolve("own.pdf");
    assertEquals(
        ExitCode.CLEAN, labels(file, "--sheet", "our-stock", "--label-sheets", own.toString()));
  }

  @Test
  void mistakesInOnesOwnSheetsAreFound() throws IOException {
    Path own = folder.resolve("own.csv");
    Files.writeString(own, "name,purpose\na,b\n");
    assertEquals(ExitCode.ERRORS, run("labels", "--list-sheets", "--label-sheets", own.toString()));
    assertTrue(err.toString().contains("own.csv:1:1"), err.toString());
  }

  @Test
  void aPackageWhoseLabelsCantBePrintedLeavesNothing() throws IOException {
    Path own =
        ownSheet(
            "letter-plate",
            row -> row.replace("letter-plate", "tiny").replace(",62,17,1,,,15,", ",7,4,1,,,,"));
    Path into = folder.resolve("new/deep");
    int code =
        run(
            "build",
            FLAT,
            "--into",
            into.toString(),
            "--label-sheets",
            own.toString(),
            "--label-sheet",
            "tiny");
    assertEquals(ExitCode.ERRORS, code, err.toString());
    assertTrue(Files.notExists(into.getParent()));
  }

  @Test
  void aPackageTakesSheetsAndPositions() throws IOException {
    int code =
        run(
            "build",
            FLAT,
            "--into",
            folder.toString(),
            "--label-sheet",
            "tape-18-flag",
            "--label-start",
            "conduit-tags=9");
    assertEquals(ExitCode.CLEAN, code, err.toString());
    Path labels = folder.resolve("flat-r1/labels");
    try (PdfParts wraps = new PdfParts(Files.readAllBytes(labels.resolve("cable-wraps.pdf")));
        PdfParts tags = new PdfParts(Files.readAllBytes(labels.resolve("conduit-tags.pdf")))) {
      assertEquals(25, wraps.document().getNumberOfPages());
      assertEquals(1, tags.document().getNumberOfPages());
    }
    assertTrue(Files.exists(labels.resolve("plate-strips.pdf")));
    assertTrue(Files.exists(labels.resolve("port-strips.pdf")));
    assertTrue(out.toString().contains("labels/cable-wraps.pdf"), out.toString());
  }

  @Test
  void aPackageRefusesTwoSheetsOfOneKind() {
    int code =
        run(
            "build",
            FLAT,
            "--into",
            folder.toString(),
            "--label-sheet",
            "a4-flag",
            "--label-sheet",
            "a4-wrap");
    assertEquals(ExitCode.USAGE, code);
    assertTrue(err.toString().contains("two sheets for cable-wraps"), err.toString());
  }
}
