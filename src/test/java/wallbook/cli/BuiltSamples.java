package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Packages of the sample jobs, built once for all tests that only read them. */
final class BuiltSamples {
  private static final Map<String, Built> BUILT = new ConcurrentHashMap<>();

  private BuiltSamples() {}

  /**
   * What became of a sample.
   *
   * @param run the program's own words
   * @param into the folder that packages are put into
   */
  record Built(Cli run, Path into) {}

  /** The build of a sample job, as a user builds it. */
  static Built built(String sample) {
    return BUILT.computeIfAbsent(sample, BuiltSamples::build);
  }

  /** The folder of the package of a sample job that has no errors. */
  static Path folder(String sample) {
    Built built = built(sample);
    assertTrue(built.run().exitCode() < ExitCode.ERRORS, built.run()::err);
    try (Stream<Path> packages = Files.list(built.into())) {
      return packages.filter(Files::isDirectory).findFirst().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All files of a package. */
  static List<Path> files(String sample) {
    try (Stream<Path> all = Files.walk(folder(sample))) {
      return all.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Built build(String sample) {
    Path into = Path.of("target", "built-samples", sample);
    clear(into);
    Path record = Path.of("sample-jobs", sample, "job.yaml");
    return new Built(Cli.run("build", record, "--into", into), into);
  }

  /** Takes away what an earlier run of the tests left. */
  private static void clear(Path folder) {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
