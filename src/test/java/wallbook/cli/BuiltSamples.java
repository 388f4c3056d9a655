package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Packages of the sample jobs, built once for all tests that only read them. */
final class BuiltSamples {
  private static final Map<String, Path> BUILT = new HashMap<>();

  private BuiltSamples() {}

  /** The folder of the package of a sample job that has no errors. */
  static synchronized Path folder(String sample) {
    return BUILT.computeIfAbsent(sample, BuiltSamples::build);
  }

  /** All files of a package. */
  static List<Path> files(String sample) {
    try (Stream<Path> all = Files.walk(folder(sample))) {
      return all.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path build(String sample) {
    Path into = Path.of("target", "built-samples");
    StringWriter said = new StringWriter();
    PrintWriter printed = new PrintWriter(said, true);
    int code =
        Main.run(
            printed,
            printed,
            false,
            "build",
            Path.of("sample-jobs", sample, "job.yaml").toString(),
            "--into",
            into.toString(),
            "--allow-warnings");
    assertTrue(code == ExitCode.CLEAN, said::toString);
    try (Stream<Path> packages = Files.list(into)) {
      return packages
          .filter(path -> path.getFileName().toString().matches(sample + "-r\\d+"))
          .findFirst()
          .orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
