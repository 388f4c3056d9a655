package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallbook.OtherJava;

/** One record gives one package, byte for byte, wherever and by whichever Java it is built. */
@Order(3)
class SameBytesTest {
  private static final Path JAVAS = Path.of("/usr/lib/jvm");

  @TempDir private Path place;

  @Test
  void timeZoneLocaleEncodingAndJavaChangeNoByte() throws Exception {
    Process plain = build(OtherJava.HOME, "plain", "UTC", "en", "US", "UTF-8");
    Process odd =
        build(
            anotherJava().orElse(OtherJava.HOME),
            "odd",
            "Pacific/Kiritimati",
            "tr",
            "TR",
            "ISO-8859-9");
    assertEquals(ExitCode.CLEAN, plain.waitFor(), () -> said("plain"));
    assertEquals(ExitCode.CLEAN, odd.waitFor(), () -> said("odd"));

    SortedMap<String, byte[]> first = files(place.resolve("plain"));
    SortedMap<String, byte[]> second = files(place.resolve("odd"));
    assertTrue(first.containsKey("flat-r1/manifest.json"));
    assertEquals(first.keySet(), second.keySet());
    Set<String> different =
        first.keySet().stream()
            .filter(path -> !Arrays.equals(first.get(path), second.get(path)))
            .collect(Collectors.toSet());
    assertEquals(Set.of(), different);
  }

  @Test
  void theFolderOfTheRecordChangesNoByte() throws IOException {
    SortedMap<String, byte[]> here = builtIn("here");
    SortedMap<String, byte[]> elsewhere = builtIn("elsewhere/of/somebody");

    assertTrue(
        new String(here.get("flat-r1/data/findings.json"), StandardCharsets.UTF_8)
            .contains("\"file\" : \"job.yaml\""));
    assertEquals(here.keySet(), elsewhere.keySet());
    here.forEach((path, bytes) -> assertArrayEquals(bytes, elsewhere.get(path), path));
  }

  /** The package of a record with warnings that lies in a folder. */
  private SortedMap<String, byte[]> builtIn(String folder) throws IOException {
    String flat = Files.readString(Path.of("sample-jobs", "flat", "job.yaml"));
    Path record = Files.createDirectories(place.resolve(folder)).resolve("job.yaml");
    Files.writeString(record, flat.replaceFirst("(?ms)^tests:$.*?^(?=[a-z]+:$)", ""));
    Path packages = place.resolve("of-" + record.getParent().getFileName());
    Cli built = Cli.run("build", record, "--into", packages);
    assertEquals(ExitCode.WARNINGS, built.exitCode(), built.err());
    return files(packages);
  }

  private Process build(
      Path java, String name, String zone, String language, String country, String encoding)
      throws IOException {
    List<String> options =
        List.of(
            "-Duser.timezone=" + zone,
            "-Duser.language=" + language,
            "-Duser.country=" + country,
            "-Dfile.encoding=" + encoding);
    return new ProcessBuilder(
            OtherJava.command(
                java,
                System.getProperty("java.class.path"),
                Main.class.getName(),
                options,
                "build",
                "sample-jobs/flat/job.yaml",
                "--into",
                place.resolve(name).toString()))
        .redirectErrorStream(true)
        .redirectOutput(place.resolve(name + ".txt").toFile())
        .start();
  }

  private String said(String name) {
    try {
      return Files.readString(place.resolve(name + ".txt"));
    } catch (IOException e) {
      return e.toString();
    }
  }

  /** A Java of another release than this one, if the system has one. */
  private static Optional<Path> anotherJava() throws IOException {
    if (!Files.isDirectory(JAVAS)) {
      return Optional.empty();
    }
    try (Stream<Path> homes = Files.list(JAVAS)) {
      return homes
          .filter(home -> Files.isExecutable(home.resolve("bin").resolve("java")))
          .filter(home -> isNewer(home.resolve("release")))
          .sorted()
          .findFirst();
    }
  }

  private static boolean isNewer(Path release) {
    try (Stream<String> lines = Files.lines(release)) {
      return lines
          .filter(line -> line.startsWith("JAVA_VERSION="))
          .map(line -> line.replaceAll("\\D+(\\d+).*", "$1"))
          .anyMatch(major -> Integer.parseInt(major) > Runtime.version().feature());
    } catch (IOException e) {
      return false;
    }
  }

  private static SortedMap<String, byte[]> files(Path folder) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
