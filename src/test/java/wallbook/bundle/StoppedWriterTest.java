package wallbook.bundle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.OtherJava;

/** Packages stored by writers that are killed, run out of room, or meet at one place. */
class StoppedWriterTest {
  private static final String NAME = "house-r1";

  @TempDir private Path into;

  private static Process start(Path into, int steps) throws IOException {
    return new ProcessBuilder(
            OtherJava.command(
                SteppedWriter.class, List.of(), into.toString(), Integer.toString(steps)))
        .redirectErrorStream(true)
        .start();
  }

  private static String firstLine(Process process) throws IOException {
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    return String.valueOf(out.readLine());
  }

  private void write(String text) throws IOException {
    SteppedWriter.store(new PackageWriter(), into, text);
  }

  /** A write that is bound to fail while it makes its files, after clearing away. */
  private void writeInVain() {
    PackageWriter writer = new PackageWriter(Storing.failingAt(1, "no ink"));
    assertThrows(PackageWriteException.class, () -> SteppedWriter.store(writer, into, "in vain"));
  }

  private Set<String> names() throws IOException {
    try (Stream<Path> all = Files.list(into)) {
      return all.map(p -> p.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  /** The one text of folder and zip; fails unless both are there and say the same throughout. */
  private String wholeText() throws IOException {
    assertEquals(Set.of(NAME, NAME + ".zip"), names());
    String text = Files.readString(into.resolve(NAME).resolve("a.txt"));
    assertEquals(text, Files.readString(into.resolve(NAME).resolve("trades/b.txt")));
    assertTrue(Files.isRegularFile(into.resolve(NAME).resolve(Manifest.NAME)));
    try (ZipFile zip = new ZipFile(into.resolve(NAME + ".zip").toFile())) {
      byte[] packed = zip.getInputStream(zip.getEntry(NAME + "/trades/b.txt")).readAllBytes();
      assertEquals(text, new String(packed, StandardCharsets.UTF_8));
    }
    return text;
  }

  /** Steps 0 to 2 write files, 3 stores the zip, 4 and 5 move the old aside, 6 and 7 the new in. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2, 3, 4, 5, 6, 7, 8})
  void aPackageIsWholeAfterItsWriterWasKilled(int steps) throws Exception {
    write("old");
    Process writer = start(into, steps);
    assertEquals(SteppedWriter.STANDING, firstLine(writer));
    writer.destroyForcibly().waitFor();

    writeInVain();
    assertEquals(steps <= 6 ? "old" : "new", wholeText());

    write("newest");
    assertEquals("newest", wholeText());
  }

  /** Steps as above: from the first move on, a writer that is told to end finishes. */
  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 7, 8})
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "there a program is not told before it ends")
  void aPackageIsWholeAtOnceAfterItsWriterWasToldToEnd(int steps) throws Exception {
    write("old");
    Process writer = start(into, steps);
    assertEquals(SteppedWriter.STANDING, firstLine(writer));
    writer.destroy();
    writer.waitFor();

    if (steps == 3) {
      assertTrue(names().containsAll(Set.of(NAME, NAME + ".zip")));
      assertEquals("old", Files.readString(into.resolve(NAME).resolve("a.txt")));
    } else {
      assertEquals("new", wholeText());
    }
  }

  @Test
  void aFirstPackageCutOffLeavesNothingAfterTheNextWriter() throws Exception {
    Process writer = start(into, 2);
    assertEquals(SteppedWriter.STANDING, firstLine(writer));
    writer.destroyForcibly().waitFor();

    writeInVain();
    assertEquals(Set.of(), names());
  }

  @Test
  void aSecondProcessIsRefusedWhileTheFirstIsAtWork() throws Exception {
    write("old");
    Process writer = start(into, 1);
    assertEquals(SteppedWriter.STANDING, firstLine(writer));
    try {
      PackageWriteException refused =
          assertThrows(PackageWriteException.class, () -> write("mine"));
      assertTrue(refused.getMessage().contains("another build"), refused.getMessage());
      assertEquals("old", Files.readString(into.resolve(NAME).resolve("a.txt")));
    } finally {
      writer.destroyForcibly().waitFor();
    }
  }

  @Test
  void aSecondWriterOfTheSameProgramIsRefusedAndTheFirstIsNotDisturbed() throws Exception {
    byte[] first = "first".getBytes(StandardCharsets.UTF_8);
    try (PackageDraft draft = new PackageWriter().begin(into, SteppedWriter.CONTENTS)) {
      draft.add(new PackageFile("a.txt", first));
      assertThrows(PackageWriteException.class, () -> write("second"));
      draft.add(new PackageFile("trades/b.txt", first));
      draft.store();
    }
    assertEquals("first", wholeText());
  }

  @Test
  void theLeftoversOfAnotherPackageAreNotTouched() throws Exception {
    Path others = Files.createDirectory(into.resolve(".house-r12~7"));
    Path alike = Files.createDirectory(into.resolve("." + NAME + "-mine"));
    write("new");
    assertTrue(Files.isDirectory(others));
    assertTrue(Files.isDirectory(alike));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void aFullDiskKeepsTheEarlierPackage(int fullAt) throws Exception {
    write("old");
    Disk full = Storing.failingAt(fullAt, "No space left on device");
    PackageWriteException problem =
        assertThrows(
            PackageWriteException.class,
            () -> SteppedWriter.store(new PackageWriter(full), into, "new"));
    assertTrue(problem.getMessage().contains("No space left"), problem.getMessage());
    assertEquals("old", wholeText());
  }

  /** The system's own folder of processes takes no files from anybody. */
  @Test
  void aPlaceThatTakesNoFilesIsNamed() {
    Path place = Path.of("/proc");
    assumeTrue(Files.isDirectory(place));
    PackageWriteException problem =
        assertThrows(
            PackageWriteException.class,
            () -> SteppedWriter.store(new PackageWriter(), place, "x"));
    assertEquals(place, problem.path());
  }
}
