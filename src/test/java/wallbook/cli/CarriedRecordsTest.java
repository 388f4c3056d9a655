package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.compose.Disclosure;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.read.JobReader;
import wallbook.read.ReadResult;
import wallbook.record.Job;
import wallbook.record.PartyRole;

/** Every document of a package gives a record back: the owner's the whole, others an extract. */
@Order(9)
class CarriedRecordsTest {
  private static final Path RECORD = Path.of("sample-jobs/lakeside/job.yaml");

  @TempDir private Path work;

  private static Path file(String name) {
    return BuiltSamples.folder("lakeside").resolve(name);
  }

  static Stream<String> wholeDocuments() {
    return Documents.all().stream()
        .filter(plan -> plan.disclosure() != Disclosure.OUTSIDE)
        .map(DocumentPlan::file);
  }

  /** Every PDF and page of the package that others than the household get. */
  static List<String> documentsForOthers() {
    Path folder = BuiltSamples.folder("lakeside");
    Set<String> whole = Set.copyOf(wholeDocuments().toList());
    return BuiltSamples.files("lakeside").stream()
        .map(path -> folder.relativize(path).toString().replace('\\', '/'))
        .filter(name -> name.endsWith(".pdf") || name.endsWith(".html"))
        .filter(name -> !whole.contains(name))
        .toList();
  }

  private Cli recover(Path document) {
    return Cli.run("recover", document, "--into", work.resolve("job.yaml"));
  }

  private Job read() {
    ReadResult result = new JobReader(Jobs.TABLES).read(work.resolve("job.yaml"));
    return result.job().orElseThrow(() -> new AssertionError(result.findings().toString()));
  }

  @ParameterizedTest
  @MethodSource("wholeDocuments")
  void theOwnersDocumentsGiveTheWholeRecordWithItsSweeps(String name) throws IOException {
    Cli recovered = recover(file(name));

    assertEquals(ExitCode.CLEAN, recovered.exitCode(), recovered.err());
    assertArrayEquals(Files.readAllBytes(RECORD), Files.readAllBytes(work.resolve("job.yaml")));
    assertArrayEquals(
        Files.readAllBytes(RECORD.resolveSibling("sweeps/gat-01.csv")),
        Files.readAllBytes(work.resolve("sweeps/gat-01.csv")));
    assertEquals(Jobs.sample("lakeside").record().tests(), read().record().tests());
  }

  @ParameterizedTest
  @MethodSource("documentsForOthers")
  void otherDocumentsGiveAnExtractThatReadsChecksAndSaysSo(String name) throws IOException {
    Cli recovered = recover(file(name));

    assertEquals(ExitCode.CLEAN, recovered.exitCode(), recovered.err());
    assertTrue(recovered.out().contains("It is an extract, made for "), recovered.out());
    assertTrue(Files.readString(work.resolve("job.yaml")).startsWith("# An extract of a record"));
    assertTrue(read().facts().extractFor().isPresent());
    Cli checked = Cli.run("check", work.resolve("job.yaml"));
    assertTrue(checked.exitCode() < ExitCode.ERRORS, checked.out());
    assertTrue(checked.out().contains("This is an extract of a record"), checked.out());
  }

  @Test
  void theLandscapersExtractHoldsTheGardenAndNothingOfTheRooms() {
    recover(file("trades/landscaping.pdf"));
    Job whole = Jobs.sample("lakeside");
    Job extract = read();

    assertFalse(extract.stubOuts().isEmpty());
    assertTrue(extract.runs().size() < whole.runs().size() / 3, extract.runs().size() + " runs");
    assertEquals(List.of(), extract.systems());
    assertEquals(List.of(), extract.exceptions());
    assertEquals(List.of(), extract.tests());
    assertTrue(extract.facts().parties().stream().noneMatch(p -> p.role() == PartyRole.PROVIDER));
  }

  @Test
  void theBuildersExtractHoldsWhatIsNotAsPromisedAndNoFeeds() {
    recover(file("trades/builder.pdf"));

    assertFalse(read().exceptions().isEmpty());
    assertTrue(read().runs().isEmpty());
  }

  @Test
  void theOwnersCopyOfThePageGivesTheWholeRecord() throws IOException {
    Cli.run(
        "build",
        "sample-jobs/flat/job.yaml",
        "--owner-copy",
        "--allow-warnings",
        "--into",
        work.resolve("package"));
    Cli recovered = recover(work.resolve("package/flat-r1/index.html"));

    assertEquals(ExitCode.CLEAN, recovered.exitCode(), recovered.err());
    assertArrayEquals(
        Files.readAllBytes(Path.of("sample-jobs/flat/job.yaml")),
        Files.readAllBytes(work.resolve("job.yaml")));
  }

  @Test
  void aWordChangedInThePageIsToldAndTheRecordInItVouchedFor() throws IOException {
    String page = Files.readString(file("index.html"));
    Path altered =
        Files.writeString(work.resolve("altered.html"), page.replaceFirst("<h1>", "<h1> "));
    Cli recovered = recover(altered);

    assertEquals(ExitCode.WARNINGS, recovered.exitCode(), recovered.err());
    assertTrue(
        recovered.out().contains("The record in it agrees with a checksum"), recovered.out());
  }

  @Test
  void aLetterChangedInTheRecordOfAPageIsTold() throws IOException {
    String page = Files.readString(file("index.html"));
    int at = page.indexOf(";base64,", page.indexOf("id=\"record\"")) + 40;
    char other = page.charAt(at) == 'A' ? 'B' : 'A';
    Path altered =
        Files.writeString(
            work.resolve("altered.html"), page.substring(0, at) + other + page.substring(at + 1));
    Cli recovered = recover(altered);

    assertEquals(ExitCode.WARNINGS, recovered.exitCode(), recovered.err());
    assertTrue(recovered.out().contains("compare the record with another"), recovered.out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<html><a id=record href='data:application/yaml;base64,!!!' data-sha256='zz'>x</a></html>",
        "<html><p>another page</p></html>",
        "just words"
      })
  void aFileWithoutARecordWritesNothing(String text) throws IOException {
    Path other = Files.writeString(work.resolve("other.html"), text);

    assertEquals(ExitCode.ERRORS, recover(other).exitCode());
    assertFalse(Files.exists(work.resolve("job.yaml")));
  }

  @Test
  void aSweepThatIsThereStopsEverything() throws IOException {
    Files.createDirectories(work.resolve("sweeps"));
    Files.write(work.resolve("sweeps/off-01.csv"), "mine".getBytes(StandardCharsets.US_ASCII));

    assertEquals(ExitCode.FAILED, recover(file("label-map.pdf")).exitCode());
    assertFalse(Files.exists(work.resolve("job.yaml")));
    assertFalse(Files.exists(work.resolve("sweeps/gat-01.csv")));
    assertEquals("mine", Files.readString(work.resolve("sweeps/off-01.csv")));
  }
}
