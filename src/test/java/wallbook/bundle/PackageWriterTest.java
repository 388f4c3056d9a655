package wallbook.bundle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated("changes the default locale or time zone")
class PackageWriterTest {
  /** SHA-256 of "abc", FIPS 180-2 appendix B.1. */
  private static final String SHA_OF_ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @TempDir private Path into;

  private static PackageFile file(String path, String text) {
    return new PackageFile(path, text.getBytes(StandardCharsets.UTF_8));
  }

  private static final PackageContents CONTENTS =
      new PackageContents("test-house", "3", LocalDate.of(2026, 3, 14), "0.1.0");

  private PackageDraft.Stored write(PackageFile... files) throws PackageWriteException {
    return Storing.store(new PackageWriter(), into, CONTENTS, files);
  }

  /** Everything below the place, hidden or not, as path and text; zips by their size. */
  private TreeMap<String, String> everything() throws IOException {
    TreeMap<String, String> all = new TreeMap<>();
    try (var paths = Files.walk(into)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        all.put(
            into.relativize(path).toString(), Files.readString(path, StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }

  @Test
  void filesLieInAFolderWithManifestAndZip() throws Exception {
    PackageDraft.Stored stored = write(file("index.html", "hi"), file("trades/a.pdf", "abc"));
    assertEquals(into.resolve("test-house-r3"), stored.folder());
    assertEquals("abc", Files.readString(stored.folder().resolve("trades/a.pdf")));
    assertEquals(
        List.of(
            "test-house-r3.zip",
            "test-house-r3/index.html",
            "test-house-r3/manifest.json",
            "test-house-r3/trades/a.pdf"),
        List.copyOf(everything().keySet()));
  }

  @Test
  void theManifestListsSizesAndChecksums() throws Exception {
    Path folder = write(file("b.txt", ""), file("a.txt", "abc")).folder();
    JsonNode manifest = new ObjectMapper().readTree(folder.resolve("manifest.json").toFile());
    assertEquals("test-house", manifest.get("job").asText());
    assertEquals("3", manifest.get("revision").asText());
    assertEquals("wallbook 0.1.0", manifest.get("tool").asText());
    assertEquals(2, manifest.get("files").size());
    JsonNode first = manifest.get("files").get(0);
    assertEquals("a.txt", first.get("path").asText());
    assertEquals(3, first.get("bytes").asInt());
    assertEquals(SHA_OF_ABC, first.get("sha256").asText());
  }

  @Test
  void theZipHoldsTheFolderInOrderWithOneDate() throws Exception {
    Path zip = write(file("b.txt", "b"), file("a/c.txt", "c")).zip();
    List<String> names = new ArrayList<>();
    try (ZipFile file = new ZipFile(zip.toFile())) {
      for (ZipEntry entry : file.stream().toList()) {
        names.add(entry.getName());
        assertEquals(LocalDateTime.of(2026, 3, 14, 12, 0), entry.getTimeLocal());
      }
      byte[] content = file.getInputStream(file.getEntry("test-house-r3/b.txt")).readAllBytes();
      assertEquals("b", new String(content, StandardCharsets.UTF_8));
    }
    assertEquals(
        List.of("test-house-r3/a/c.txt", "test-house-r3/b.txt", "test-house-r3/manifest.json"),
        names);
  }

  @Test
  void theSameFilesGiveTheSameBytesInAnyOrderAndTimeZone() throws Exception {
    write(file("b.txt", "b"), file("a.txt", "a"));
    TreeMap<String, String> first = everything();
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      write(file("a.txt", "a"), file("b.txt", "b"));
    } finally {
      TimeZone.setDefault(before);
    }
    assertEquals(first, everything());
  }

  @Test
  void anEarlierPackageIsReplacedWhole() throws Exception {
    write(file("old.txt", "old"), file("both.txt", "old"));
    write(file("both.txt", "new"));
    assertEquals(
        List.of("test-house-r3.zip", "test-house-r3/both.txt", "test-house-r3/manifest.json"),
        List.copyOf(everything().keySet()));
    assertEquals("new", everything().get("test-house-r3/both.txt"));
  }

  @Test
  void aFailureMidwayKeepsTheEarlierPackageAndLeavesNothingElse() throws Exception {
    write(file("a.txt", "old"));
    TreeMap<String, String> before = everything();
    PackageWriteException problem =
        assertThrows(
            PackageWriteException.class,
            () ->
                Storing.store(
                    new PackageWriter(Storing.failingAt(2, "no ink")),
                    into,
                    CONTENTS,
                    file("a.txt", "new"),
                    file("b.txt", "new")));
    assertTrue(problem.path().endsWith("b.txt"), problem.getMessage());
    assertTrue(problem.getMessage().contains("no ink"), problem.getMessage());
    assertEquals(before, everything());
    assertOnlyThePackageIsThere();
  }

  @Test
  void aPackageGivenUpKeepsTheEarlierOneToo() throws Exception {
    write(file("a.txt", "old"));
    TreeMap<String, String> before = everything();
    assertThrows(
        IllegalStateException.class,
        () -> {
          try (PackageDraft draft = new PackageWriter().begin(into, CONTENTS)) {
            draft.add(file("b.txt", "new"));
            throw new IllegalStateException("broken");
          }
        });
    assertEquals(before, everything());
    assertOnlyThePackageIsThere();
  }

  @Test
  void aFailureOfTheFirstPackageLeavesNothing() throws Exception {
    assertThrows(
        PackageWriteException.class,
        () ->
            Storing.store(
                new PackageWriter(Storing.failingAt(1, "no ink")),
                into,
                CONTENTS,
                file("a.txt", "x")));
    try (var left = Files.list(into)) {
      assertEquals(List.of(), left.toList());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void aMoveThatFailsPutsTheEarlierPackageBack(int failingMove) throws Exception {
    write(file("a.txt", "old"));
    TreeMap<String, String> before = everything();
    Disk disk =
        new Disk() {
          private int moves;

          @Override
          void move(Path from, Path to) throws IOException {
            if (++moves == failingMove) {
              throw new IOException("stuck");
            }
            super.move(from, to);
          }
        };
    assertThrows(
        PackageWriteException.class,
        () -> Storing.store(new PackageWriter(disk), into, CONTENTS, file("a.txt", "new")));
    assertEquals(before, everything());
    assertOnlyThePackageIsThere();
  }

  @Test
  void anEarlierPackageThatCantBePutBackIsKeptAndNamed() throws Exception {
    write(file("a.txt", "old"));
    Disk disk =
        new Disk() {
          private int moves;

          @Override
          void move(Path from, Path to) throws IOException {
            if (++moves > 2) {
              throw new IOException("stuck");
            }
            super.move(from, to);
          }
        };
    PackageWriteException problem =
        assertThrows(
            PackageWriteException.class,
            () -> Storing.store(new PackageWriter(disk), into, CONTENTS, file("a.txt", "new")));
    assertTrue(problem.getMessage().contains("now lies at"), problem.getMessage());
    assertTrue(everything().containsValue("old"));
  }

  @Test
  void aFolderThatIsNoPackageIsNotTouched() throws Exception {
    Files.createDirectory(into.resolve("test-house-r3"));
    Files.writeString(into.resolve("test-house-r3/letter.txt"), "dear");
    PackageWriteException problem =
        assertThrows(PackageWriteException.class, () -> write(file("a.txt", "x")));
    assertEquals(into.resolve("test-house-r3"), problem.path());
    assertEquals("dear", everything().get("test-house-r3/letter.txt"));
  }

  @Test
  void aLinkAtThePlaceIsNotFollowed() throws Exception {
    Path elsewhere = Files.createDirectory(into.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("manifest.json"), "\"" + Manifest.FORMAT + "\"");
    Files.createSymbolicLink(into.resolve("test-house-r3"), elsewhere);
    assertThrows(PackageWriteException.class, () -> write(file("a.txt", "x")));
    assertTrue(Files.exists(elsewhere.resolve("manifest.json")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../x",
        "/x",
        "a/../x",
        "a//x",
        "",
        "a/",
        ".",
        "..",
        "a\\x",
        "C:x",
        "x\u0000",
        "x\n",
        "nul",
        "AUX.txt",
        "x.",
        "x ",
        "what?",
        "manifest.json",
        "Manifest.JSON"
      })
  void aPathThatLeavesThePackageOrFewSystemsStoreIsRefused(String path) throws Exception {
    assertThrows(PackageWriteException.class, () -> write(file(path, "x")));
    try (var left = Files.list(into)) {
      assertEquals(List.of(), left.toList());
    }
  }

  @Test
  void twoPathsThatSomeSystemsTakeForOneAreRefused() {
    assertThrows(PackageWriteException.class, () -> write(file("a.txt", "x"), file("A.txt", "y")));
    assertThrows(PackageWriteException.class, () -> write(file("a", "x"), file("A/b.txt", "y")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"../up", "a/b", ".hidden", "a:b", ""})
  void aJobIdThatIsNoNameIsRefused(String job) {
    PackageContents odd =
        new PackageContents(job, job.isEmpty() ? "/" : "1", LocalDate.of(2026, 1, 1), "0");
    assertThrows(PackageWriteException.class, () -> new PackageWriter().begin(into, odd).close());
  }

  @Test
  void aPlaceThatIsNotThereIsNamed() {
    Path none = into.resolve("none");
    PackageWriteException problem =
        assertThrows(
            PackageWriteException.class, () -> new PackageWriter().begin(none, CONTENTS).close());
    assertEquals(none, problem.path());
    assertFalse(Files.exists(none));
  }

  @Test
  void severalThreadsMayAddFiles() throws Exception {
    List<PackageFile> files =
        IntStream.range(0, 60).mapToObj(i -> file("many/" + i + ".txt", "text " + i)).toList();
    PackageDraft.Stored stored;
    try (PackageDraft draft = new PackageWriter().begin(into, CONTENTS)) {
      ExecutorService threads = Executors.newFixedThreadPool(6);
      List<Future<Void>> adding = new ArrayList<>();
      for (PackageFile file : files) {
        adding.add(
            threads.submit(
                () -> {
                  draft.add(file);
                  return null;
                }));
      }
      for (Future<Void> one : adding) {
        one.get();
      }
      threads.shutdown();
      stored = draft.store();
    }
    for (PackageFile file : files) {
      assertArrayEquals(file.bytes(), Files.readAllBytes(stored.folder().resolve(file.path())));
    }
    try (ZipFile zip = new ZipFile(stored.zip().toFile())) {
      assertEquals(files.size() + 1, zip.size());
    }
  }

  @Test
  void nothingIsSeenBeforeThePackageIsStored() throws Exception {
    try (PackageDraft draft = new PackageWriter().begin(into, CONTENTS)) {
      draft.add(file("a.txt", "x"));
      assertFalse(Files.exists(into.resolve("test-house-r3")));
      draft.store();
    }
    assertOnlyThePackageIsThere();
  }

  private void assertOnlyThePackageIsThere() throws IOException {
    try (var left = Files.list(into)) {
      assertEquals(
          List.of("test-house-r3", "test-house-r3.zip"),
          left.map(path -> path.getFileName().toString()).sorted().toList());
    }
  }
}
