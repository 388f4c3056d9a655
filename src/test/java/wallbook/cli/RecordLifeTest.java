package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record from its beginning through schedules that go out and come back. */
class RecordLifeTest {
  private static final Path FLAT = Path.of("sample-jobs", "flat", "job.yaml");

  @TempDir private Path folder;

  @Test
  void aRecordJustBegunHasNoErrors() throws IOException {
    for (String language : new String[] {"en-US", "es-MX"}) {
      Path job = folder.resolve("Job of " + language);
      Cli begun =
          Cli.run(
              "start",
              job,
              "--rooms",
              "Kitchen, Living room,Bedroom, Bedroom, Sauna: 2",
              "--units",
              "metric",
              "--language",
              language);
      Cli checked = Cli.run("check", job.resolve("job.yaml"));

      assertEquals(ExitCode.CLEAN, begun.exitCode(), begun.err());
      assertTrue(checked.exitCode() < ExitCode.ERRORS, checked.out());
      String text = Files.readString(job.resolve("job.yaml"));
      assertTrue(text.contains("    kind: living\n"), text);
      assertTrue(text.contains("  - id: bedroom-2\n"), text);
    }
  }

  @Test
  void aRecordThatIsThereIsNotBegunAgain() throws IOException {
    Path record = Files.writeString(folder.resolve("job.yaml"), "mine");

    assertEquals(ExitCode.FAILED, Cli.run("start", folder, "--rooms", "Hall").exitCode());
    assertEquals("mine", Files.readString(record));
  }

  @Test
  void schedulesGoOutAndComeBackWithoutAChange() throws IOException {
    Path record = Files.copy(FLAT, folder.resolve("job.yaml"));
    Path out = folder.resolve("out");

    assertEquals(ExitCode.CLEAN, Cli.run("export", record, "--into", out).exitCode());
    Cli back = Cli.run("import", record, out.resolve("runs.csv"), "--list", "runs");
    assertEquals(ExitCode.CLEAN, back.exitCode(), back.err());
    assertTrue(back.out().contains("0 added, 0 changed"), back.out());
    assertEquals(Files.readString(FLAT), Files.readString(record));
  }

  @Test
  void aScheduleThatWouldBreakTheRecordChangesNothingAndIsFoundAtItsCell() throws IOException {
    Path record = Files.copy(FLAT, folder.resolve("job.yaml"));
    Path csv = Files.writeString(folder.resolve("runs.csv"), "id,cable\nl-01,cat66a\n");
    Cli back = Cli.run("import", record, csv, "--list", "runs");

    assertEquals(ExitCode.ERRORS, back.exitCode());
    assertTrue(back.err().contains("runs.csv:2:6: error: "), back.err());
    assertEquals(Files.readString(FLAT), Files.readString(record));
  }

  @Test
  void aTrialWritesNothing() throws IOException {
    Path record = Files.copy(FLAT, folder.resolve("job.yaml"));
    Path csv = Files.writeString(folder.resolve("runs.csv"), "id,note\nl-01,new\n");
    Cli back = Cli.run("import", record, csv, "--list", "runs", "--try");

    assertTrue(back.out().contains("1 changed"), back.out());
    assertFalse(Files.readString(record).contains("note: new"));
  }

  @Test
  void aChangeIsToldAtTheTerminalAndInANotice() throws IOException {
    String later = Files.readString(FLAT).replaceFirst("label: L-01", "label: L-91");
    Path now = Files.writeString(folder.resolve("later.yaml"), later);
    Path notice = folder.resolve("change-notice.pdf");
    Cli compared = Cli.run("compare", FLAT, now, "--into", notice);

    assertEquals(ExitCode.CLEAN, compared.exitCode(), compared.err());
    assertTrue(compared.out().contains("label: L-01 -> L-91\n"), compared.out());
    try (PDDocument pdf = Loader.loadPDF(notice.toFile())) {
      assertTrue(new PDFTextStripper().getText(pdf).contains("L-91"));
    }
  }

  @Test
  void aPackageIsComparedFromItsFolderAndItsZip() {
    Path made = BuiltSamples.folder("flat");
    Path zip = made.resolveSibling(made.getFileName() + ".zip");

    for (Path old : List.of(made, zip)) {
      Cli compared = Cli.run("compare", old, FLAT);
      assertEquals(ExitCode.CLEAN, compared.exitCode(), compared.err());
      assertFalse(compared.out().contains(" -> "), compared.out());
    }
  }
}
