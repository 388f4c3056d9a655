package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import wallbook.reference.Tables;

/** Each waits for the save itself; the time allowed only ends what would wait for ever. */
@Timeout(300)
class SourceWatchTest {
  @TempDir private Path folder;
  private Path record;

  @BeforeEach
  void save() throws IOException {
    record = Files.writeString(folder.resolve("job.yaml"), "format: 1\n");
  }

  private SourceWatch watch(Path... files) throws IOException {
    return new SourceWatch(Sources.files(Set.of(files)));
  }

  @Test
  void whatIsSavedWhileNobodyWaitsIsNotMissed() throws Exception {
    try (SourceWatch watch = watch(record)) {
      assertFalse(watch.isSaved());
      Files.writeString(record, "format: 1\njob: {}\n");
      assertTrue(watch.isSaved());
      watch.awaitSave();
      assertFalse(watch.isSaved());
    }
  }

  @Test
  void aSaveEndsTheWaiting() throws Exception {
    try (SourceWatch watch = watch(record)) {
      CompletableFuture<Void> noticed =
          CompletableFuture.runAsync(
              () -> {
                try {
                  watch.awaitSave();
                } catch (InterruptedException e) {
                  throw new IllegalStateException(e);
                }
              });
      Files.writeString(folder.resolve("other.yaml"), "not watched\n");
      Files.writeString(record, "format: 1\njob: {}\n");
      noticed.get();
    }
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "nothing tells one file from another there")
  void aFileThatTakesThePlaceOfAnotherIsNoticedThoughItIsAsOldAndAsLong() throws Exception {
    Path other = Files.writeString(folder.resolve("job.yaml.new"), "format: 2\n");
    Files.setLastModifiedTime(other, Files.getLastModifiedTime(record));
    try (SourceWatch watch = watch(record)) {
      Files.move(other, record, StandardCopyOption.ATOMIC_MOVE);
      watch.awaitSave();
    }
  }

  @Test
  void aFileThatGoesAndOneThatComesAreNoticedAndItsFolderToo() throws Exception {
    Path picture = folder.resolve("photos/rough-in/den.png");
    try (SourceWatch watch = watch(record, picture)) {
      Files.createDirectories(picture.getParent());
      assertFalse(watch.isSaved());
      Files.writeString(picture, "a picture");
      watch.awaitSave();
      Files.delete(picture);
      watch.awaitSave();
      Files.delete(picture.getParent());
      Files.createDirectories(picture.getParent());
      Files.writeString(picture, "another one");
      watch.awaitSave();
    }
  }

  @Test
  void savesOfSeveralFilesAreOne() throws Exception {
    Path picture = folder.resolve("den.png");
    try (SourceWatch watch = watch(record, picture)) {
      Files.writeString(record, "format: 1\njob: {}\n");
      Files.writeString(picture, "a picture");
      watch.awaitSave();
      assertFalse(watch.isSaved());
    }
  }

  @Test
  void whatElseHappensInTheFolderIsNoMatter() throws Exception {
    Path record = Files.copy(Path.of("sample-jobs/flat/job.yaml"), folder.resolve("flat.yaml"));
    try (SourceWatch watch = watch(record, folder.resolve("shop.png"))) {
      assertEquals(ExitCode.CLEAN, Cli.run("build", record, "--into", folder).exitCode());
      assertTrue(Files.exists(folder.resolve("flat-r1.zip")));
      assertFalse(watch.isSaved());
      Files.setLastModifiedTime(record, FileTime.from(Instant.EPOCH));
      watch.awaitSave();
    }
  }

  @Test
  void whatIsNewlyWatchedCountsAsSavedIfItWasSavedAfterTheLastWait() throws Exception {
    Path old = Files.writeString(folder.resolve("old.png"), "a picture");
    Files.setLastModifiedTime(old, FileTime.from(Instant.EPOCH));
    Path fresh = folder.resolve("fresh.png");
    try (SourceWatch watch = watch(record)) {
      watch.follow(Sources.files(Set.of(record, old, fresh)));
      assertFalse(watch.isSaved());
      Path saved = Files.writeString(folder.resolve("saved.png"), "a picture");
      Files.setLastModifiedTime(saved, FileTime.from(Instant.now().plusSeconds(1)));
      watch.follow(Sources.files(Set.of(record, saved)));
      assertTrue(watch.isSaved());
      watch.awaitSave();
      assertFalse(watch.isSaved());
    }
  }

  @Test
  void ofAFolderItCountsWhatItHoldsWithoutWhatEditorsKeepThere() throws Exception {
    Path words = folder.resolve("words/en");
    try (SourceWatch watch = new SourceWatch(new Sources(Set.of(), Set.of(words)))) {
      Files.createDirectories(words);
      watch.awaitSave();
      Files.writeString(words.resolve(".mine.properties.swp"), "");
      Files.writeString(words.resolve("mine.properties~"), "");
      assertFalse(watch.isSaved());
      Files.writeString(words.resolve("mine.properties"), "");
      watch.awaitSave();
    }
  }

  @Test
  void theFilesThatARecordNamesAreKnownThoughItHasErrorsForWantOfThem() throws Exception {
    String flat = Files.readString(Path.of("sample-jobs/flat/job.yaml"));
    String named = flat.replaceFirst("    kind: certification\n", "$0    sweep: sweeps/l-01.csv\n");
    Files.writeString(record, named);
    Reading reading = Reading.of(record, new Tables());
    assertEquals(ExitCode.ERRORS, reading.exitCode());
    assertEquals(
        Set.of(folder.toRealPath().resolve("sweeps/l-01.csv")),
        Sources.named(record, reading.about().orElseThrow()));
  }
}
