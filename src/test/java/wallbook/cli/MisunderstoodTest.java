package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was not understood stands in a few lines, the nearest thing that would be, beside it. */
class MisunderstoodTest {
  private static final String FLAT = "sample-jobs/flat/job.yaml";

  @Test
  void anOptionIsSaidWithTheNearest() {
    assertEquals(
        List.of(
            "Unknown options: '--unit', 'METRIC'",
            "Possible solutions: --units",
            "\"wallbook build --help\" says what can be given."),
        said("build", FLAT, "--unit", "METRIC"));
  }

  @Test
  void aCommandIsSaidWithTheNearest() {
    assertEquals(
        List.of(
            "Unmatched arguments from index 0: 'bild', '" + FLAT + "'",
            "Did you mean: wallbook build or wallbook build-all?",
            "\"wallbook --help\" says what can be given."),
        said("bild", FLAT));
  }

  @Test
  void aValueIsSaidWithThoseThatCanBe() {
    assertEquals(
        List.of(
            "Invalid value for option '--paper': expected one of [LETTER, A4] (case-insensitive)"
                + " but was 'A5'",
            "\"wallbook build --help\" says what can be given."),
        said("build", FLAT, "--paper", "A5"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check",
        "build",
        "wish",
        "run",
        "recover",
        "export",
        "import",
        "start",
        "compare",
        "build-all"
      })
  void whatIsMissingIsNamed(String command) {
    List<String> said = said(command);

    assertEquals("Missing required ", said.get(0).substring(0, 17));
    assertEquals(
        List.of("\"wallbook " + command + " --help\" says what can be given."),
        said.subList(1, said.size()));
  }

  private static List<String> said(String... arguments) {
    Cli run = Cli.run((Object[]) arguments);
    assertEquals(ExitCode.USAGE, run.exitCode());
    assertEquals("", run.out());
    return run.err().lines().toList();
  }
}
