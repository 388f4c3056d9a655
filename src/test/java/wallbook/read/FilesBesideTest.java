package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.Marked;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.picture.Photos;
import wallbook.record.Job;

/** Files that a record names: sweeps and photographs. */
class FilesBesideTest {
  private static final String COLUMNS = "frequency_mhz,parameter,pair,value_db,direction\n";
  private static final String RECORD =
      """
      format: 1
      job: {id: s, title: S, revision: 1}
      floors: [{id: g, name: G, level: 0, elevation: 0 ft}]
      spaces: [{id: den, name: D, floor: g, kind: hall}]
      places: [{id: d1, name: One, space: den, kind: wall_plate, use: data}, {id: d2, name: Two, space: den, kind: wall_plate, use: data}]
      runs: [{id: r1, label: R, cable: cat6, condition: dark, from: {place: d1, finish: terminated}, to: {place: d2, finish: terminated}}]
      """;

  @TempDir Path folder;

  private List<Finding> sweep(String csv) throws IOException {
    Files.writeString(folder.resolve("k.csv"), csv);
    return read("tests: [{id: t1, run: r1, date: 2026-04-20, kind: certification, result: pass, sweep: k.csv}]\n")
        .findings();
  }

  private ReadResult read(String rest) throws IOException {
    Path file = folder.resolve("job.yaml");
    Files.writeString(file, RECORD + rest);
    ReadResult result = new JobReader(Jobs.TABLES).read(file);
    result.findings().forEach(AllWords::sayInEveryLanguage);
    return result;
  }

  @Test
  void aSweepIsReadFromItsFile() throws IOException {
    Files.writeString(
        folder.resolve("k.csv"),
        COLUMNS + "100,next,36-45,44.5,from_to\n\n250,next,36-45,38.2,to_from\n");
    Job job =
        read("tests: [{id: t1, run: r1, date: 2026-04-20, kind: certification, result: pass, sweep: k.csv}]\n")
            .job()
            .orElseThrow();

    assertEquals(2, job.sweepOf(job.tests().get(0)).size());
    assertEquals(38.2, job.sweepOf(job.tests().get(0)).get(1).valueInDecibels());
  }

  @ParameterizedTest
  @ValueSource(strings = {"missing.csv", "../outside.csv", "/etc/hostname", "sub"})
  void aSweepThatIsNotBesideTheRecordIsAnError(String name) throws IOException {
    Files.createDirectories(folder.resolve("sub"));
    Marked record =
        new Marked(
            RECORD
                + "tests: [{id: t1, run: r1, date: 2026-04-20, kind: certification, result: pass, sweep: ¶"
                + name
                + "}]\n");
    Finding finding = read(record.text().substring(RECORD.length())).findings().get(0);

    assertEquals("missing-file", finding.name());
    assertTrue(finding.position().toString().endsWith(record.position()));
  }

  @Test
  void aSweepWithoutAColumnIsAnError() throws IOException {
    Finding finding = sweep("frequency_mhz,parameter,pair,value_db\n100,next,36-45,44.5\n").get(0);
    assertEquals("missing-column", finding.name());
    assertEquals("k.csv:1:1", finding.position().toString());
  }

  @Test
  void aRowOfAnotherLengthIsReportedAtItsLine() throws IOException {
    Finding finding = sweep(COLUMNS + "100,next,36-45,44.5,from_to\n101,next,36-45,44.5\n").get(0);
    assertEquals("row-length", finding.name());
    assertEquals("k.csv:3:1", finding.position().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "not-a-number x,next,36-45,44.5,from_to",
        "not-a-number 100,next,36-45,x,from_to",
        "unknown-word 100,text,36-45,44.5,from_to",
        "unknown-word 100,next,36-45,44.5,up",
        "impossible-value 0,next,36-45,44.5,from_to"
      })
  void aCellThatMeansNothingIsReportedAtItsLine(String nameAndRow) throws IOException {
    String[] parts = nameAndRow.split(" ", 2);
    Finding finding = sweep(COLUMNS + parts[1] + "\n").get(0);
    assertEquals(parts[0], finding.name());
    assertEquals("k.csv:2:1", finding.position().toString());
  }

  @Test
  void aSweepOfAnotherEncodingIsAnError() throws IOException {
    Files.write(folder.resolve("k.csv"), (COLUMNS + "100,é").getBytes(StandardCharsets.ISO_8859_1));
    Finding finding =
        read("tests: [{id: t1, run: r1, date: 2026-04-20, kind: certification, result: pass, sweep: k.csv}]\n")
            .findings()
            .get(0);
    assertEquals("not-utf-8", finding.name());
  }

  @Test
  void aMissingPhotographIsAWarningAndTheJobIsRead() throws IOException {
    ReadResult result = read("photos: [{file: none.jpg, space: den, stage: final, caption: C}]\n");

    assertEquals("photo-missing", result.findings().get(0).name());
    assertEquals(Severity.WARNING, result.findings().get(0).severity());
    assertTrue(result.job().isPresent());
  }

  @Test
  void aPhotographBesideTheRecordIsSilent() throws IOException {
    Files.createDirectories(folder.resolve("photos"));
    Files.write(folder.resolve("photos/a.jpg"), Photos.file(Photos.quarters(8, 6), "jpeg"));
    assertEquals(
        List.of(),
        read("photos: [{file: photos/a.jpg, space: den, stage: final, caption: C}]\n").findings());
  }

  @Test
  void aRecordThatIsNotThereIsAFinding() {
    ReadResult result = new JobReader(Jobs.TABLES).read(folder.resolve("none.yaml"));
    assertEquals("file-unreadable", result.findings().get(0).name());
    assertTrue(result.job().isEmpty() && result.soundPart().isEmpty());
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
    Path outside = Files.createTempFile("outside", ".jpg");
    Files.createSymbolicLink(folder.resolve("link.jpg"), outside);
    assertEquals(
        "photo-missing",
        read("photos: [{file: link.jpg, space: den, stage: final, caption: C}]\n")
            .findings()
            .get(0)
            .name());
    Files.delete(outside);
  }
}
