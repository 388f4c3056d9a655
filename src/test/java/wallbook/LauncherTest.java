package wallbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The POSIX launcher, run with a Java that only says what it was called with. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
  private static final Path LAUNCHER = Path.of("src/main/launcher/wallbook");

  @TempDir private Path folder;
  private Path cache;

  @BeforeEach
  void layOut() throws IOException {
    cache = folder.resolve("cache");
    Files.createDirectories(folder.resolve("home/bin"));
    Files.createDirectories(folder.resolve("home/lib"));
    Files.createDirectories(folder.resolve("java/bin"));
    Files.copy(LAUNCHER, folder.resolve("home/bin/wallbook"));
    Files.writeString(folder.resolve("home/lib/wallbook.jar"), "no jar");
    java();
    endingWith(0);
  }

  private void endingWith(int code) throws IOException {
    Files.writeString(folder.resolve("java/code"), String.valueOf(code));
  }

  /** A Java that prints its arguments, makes the archive it is asked for, and ends with a code. */
  private void java() throws IOException {
    Path java = folder.resolve("java/bin/java");
    Files.writeString(
        java,
        """
        #!/bin/sh
        for argument in "$@"; do
          echo "$argument"
          case $argument in
            -XX:ArchiveClassesAtExit=*) echo classes > "${argument#*=}" ;;
          esac
        done
        exit "$(cat "${0%/*}/../code")"
        """);
    Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private record Ended(int code, List<String> arguments) {}

  private Ended start(String... arguments) throws IOException, InterruptedException {
    return startAs("home/bin/wallbook", arguments);
  }

  private Ended startAs(String launcher, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sh", launcher));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder
        .environment()
        .putAll(
            Map.of(
                "JAVA_HOME",
                folder.resolve("java").toString(),
                "WALLBOOK_CACHE",
                cache.toString(),
                "WALLBOOK_JAVA_OPTIONS",
                ""));
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), said.lines().toList());
  }

  /** Names of the archives of classes. */
  private List<String> cached() throws IOException {
    if (!Files.exists(cache)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(cache)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".jsa"))
          .sorted()
          .toList();
    }
  }

  private static boolean has(Ended ended, String beginning) {
    return ended.arguments().stream().anyMatch(a -> a.startsWith(beginning));
  }

  @Test
  void handsArgumentsOnAsTheyStand() throws Exception {
    Ended ended = start("run", "my job.yaml", "K 01", "");
    List<String> last =
        ended.arguments().subList(ended.arguments().size() - 4, ended.arguments().size());
    assertEquals(List.of("run", "my job.yaml", "K 01", ""), last);
  }

  @Test
  void endsWithTheCodeOfTheProgram() throws Exception {
    endingWith(2);
    assertEquals(2, start("check", "job.yaml").code());
    assertEquals(2, start("check", "job.yaml").code());
  }

  @Test
  void preparesClassesOnceAndUsesThemFromThenOn() throws Exception {
    assertTrue(has(start("run", "job.yaml"), "-XX:ArchiveClassesAtExit="));
    assertEquals(1, cached().size());
    Ended second = start("run", "job.yaml");
    assertFalse(has(second, "-XX:ArchiveClassesAtExit="));
    assertTrue(has(second, "-XX:SharedArchiveFile=" + cache.resolve(cached().get(0))));
  }

  @Test
  void preparesClassesAnewForAnotherJar() throws Exception {
    start("run", "job.yaml");
    Files.writeString(folder.resolve("home/lib/wallbook.jar"), "another jar");
    assertTrue(has(start("run", "job.yaml"), "-XX:ArchiveClassesAtExit="));
    assertEquals(1, cached().size());
  }

  @Test
  void preparesClassesAnewWhereTheyAreGone() throws Exception {
    start("run", "job.yaml");
    Files.delete(cache.resolve(cached().get(0)));
    assertTrue(has(start("run", "job.yaml"), "-XX:ArchiveClassesAtExit="));
    assertTrue(has(start("run", "job.yaml"), "-XX:SharedArchiveFile="));
  }

  @Test
  void preparesClassesAnewAfterTheFirstCallThatDoesNotFail() throws Exception {
    endingWith(64);
    start("run", "job.yaml", "K-99");
    Ended failing = start("run", "job.yaml", "K-98");
    assertTrue(has(failing, "-XX:SharedArchiveFile="));
    assertEquals(64, failing.code());
    endingWith(0);
    preparesAnew("-XX:SharedArchiveFile=");
    preparesAnew("-XX:ArchiveClassesAtExit=");
    preparesAnew("-XX:SharedArchiveFile=");
  }

  private void preparesAnew(String option) throws Exception {
    Ended ended = start("run", "job.yaml", "K-01");
    assertEquals(0, ended.code());
    assertTrue(has(ended, option), option);
  }

  @Test
  void rehearsesWhereClassesAreKeptAndNowhereElse() throws Exception {
    assertTrue(has(start("wish", "job.yaml"), "-Dwallbook.rehearse=true"));
    assertFalse(has(start("wish", "job.yaml"), "-Dwallbook.rehearse=true"));
  }

  @Test
  void keepsTheClassesOfEachCommand() throws Exception {
    start("build-all", "jobs");
    start("build", "job.yaml");
    assertEquals(2, cached().size());
    assertTrue(has(start("build-all", "jobs"), "-XX:SharedArchiveFile="));
  }

  @Test
  void preparesNoClassesForWhatIsEndedByAKeyButUsesWhatThereIs() throws Exception {
    assertFalse(has(start("build", "job.yaml", "--watch"), "-XX:ArchiveClassesAtExit="));
    assertEquals(List.of(), cached());
    start("build", "job.yaml");
    assertTrue(has(start("build", "--watch", "job.yaml"), "-XX:SharedArchiveFile="));
  }

  @Test
  void takesLittleMemoryForAnswers() throws Exception {
    assertTrue(has(start("wish", "job.yaml"), "-Xmn"));
    assertFalse(has(start("labels", "job.yaml"), "-Xmn"));
  }

  @Test
  void compilesWellWhatRunsLong() throws Exception {
    assertFalse(has(start("build-all", "jobs"), "-XX:TieredStopAtLevel"));
    assertTrue(has(start("build", "job.yaml"), "-XX:TieredStopAtLevel=1"));
  }

  @Test
  void startsWithoutACacheFolderThatCanBeMade() throws Exception {
    Files.writeString(cache, "a file where the folder would be");
    Ended ended = start("run", "job.yaml");
    assertEquals(0, ended.code());
    assertFalse(has(ended, "-XX:ArchiveClassesAtExit="));
    assertFalse(has(ended, "-XX:SharedArchiveFile="));
  }

  @Test
  void cachesNothingForWhatIsNoCommand() throws Exception {
    assertFalse(has(start("--help"), "-XX:ArchiveClassesAtExit="));
    assertFalse(Files.exists(cache));
  }

  @Test
  void startsFromItsOwnFolder() throws Exception {
    Path bin = folder.toRealPath().resolve("home/bin");
    Path link = Files.createSymbolicLink(folder.resolve("here"), bin);
    ProcessBuilder builder = new ProcessBuilder("sh", "wallbook", "--version");
    builder.directory(link.toFile()).environment().put("JAVA_HOME", folder + "/java");
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(said.lines().toList().contains(bin.resolveSibling("lib/wallbook.jar").toString()));
  }

  @Test
  void startsThroughALink() throws Exception {
    Files.createSymbolicLink(folder.resolve("link"), Path.of("home/bin/wallbook"));
    Ended ended = startAs("link", "run", "job.yaml");
    assertTrue(
        ended
            .arguments()
            .contains(folder.toRealPath().resolve("home/lib/wallbook.jar").toString()));
  }
}
