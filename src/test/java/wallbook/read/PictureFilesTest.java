package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.picture.Photos;
import wallbook.record.Job;

class PictureFilesTest {
  @TempDir private Path folder;

  @Test
  void aPictureBesideTheRecordIsRead() throws IOException {
    put("a.jpg", Photos.file(Photos.quarters(60, 40), "jpeg"));

    ReadResult result = read("a.jpg");

    assertEquals(List.of(), result.findings());
    Job job = result.job().orElseThrow();
    assertEquals(60, job.pictureOf(job.photos().get(0)).orElseThrow().widthPx());
  }

  @Test
  void aPictureThatCannotBeShownIsAWarningAndTheJobStands() throws IOException {
    byte[] jpeg = Photos.file(Photos.quarters(400, 300), "jpeg");
    put("half.jpg", Arrays.copyOf(jpeg, jpeg.length / 2));
    put("vast.png", Photos.headOfPng(60_000, 60_000));
    put("drawing.svg", "<svg/>".getBytes(StandardCharsets.UTF_8));

    assertEquals("photo-damaged", only(read("half.jpg")));
    assertEquals("photo-too-large", only(read("vast.png")));
    assertEquals("photo-of-unknown-form", only(read("drawing.svg")));
    assertEquals("photo-missing", only(read("none.jpg")));
  }

  @Test
  void aPictureOutsideTheFolderIsMissing() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    put("a.jpg", Photos.file(Photos.quarters(60, 40), "jpeg"));
    Files.createSymbolicLink(inner.resolve("link.jpg"), folder.resolve("a.jpg"));

    assertEquals("photo-missing", only(read(inner, "../a.jpg")));
    assertEquals("photo-missing", only(read(inner, "link.jpg")));
  }

  @Test
  void theLogoIsReadLikeAPhotograph() throws IOException {
    put("logo.png", Photos.file(Photos.quarters(60, 40), "png"));

    assertTrue(read(folder, "", "look: {logo: logo.png}").job().orElseThrow().logo().isPresent());
    ReadResult without = read(folder, "", "look: {logo: none.png}");
    assertEquals("photo-missing", only(without));
    assertEquals("job.yaml:2:62", without.findings().get(0).position().toString());
    assertTrue(without.job().orElseThrow().logo().isEmpty());
  }

  private void put(String name, byte[] bytes) throws IOException {
    Files.write(folder.resolve(name), bytes);
  }

  private ReadResult read(String photo) {
    return read(folder, photo);
  }

  private static ReadResult read(Path folder, String photo) {
    return read(
        folder,
        """
        floors: [{id: g, name: Ground, level: 0, elevation: 0 ft}]
        spaces: [{id: den, name: Den, floor: g, kind: living}]
        photos: [{file: %s, space: den, stage: rough_in, caption: Wall}]
        """
            .formatted(photo),
        "invented: yes");
  }

  private static ReadResult read(Path folder, String rest, String fact) {
    String record =
        "format: 1\njob: {id: small, title: Small job, revision: 1, %s}\n%s".formatted(fact, rest);
    return new JobReader(Jobs.TABLES)
        .read("job.yaml", record.getBytes(StandardCharsets.UTF_8), new RecordFolder(folder));
  }

  private static String only(ReadResult result) {
    assertTrue(result.job().isPresent());
    assertEquals(1, result.findings().size());
    Finding finding = result.findings().get(0);
    assertEquals(Severity.WARNING, finding.severity());
    AllWords.sayInEveryLanguage(finding);
    return finding.name();
  }
}
