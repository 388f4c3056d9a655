package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Tables;

class VersionTest {
  private final Cli run = Cli.run("--version");

  @Test
  void theVersionTellsTheEditionOfEveryPublishedTable() {
    assertEquals(ExitCode.CLEAN, run.exitCode());
    for (String name : Tables.names()) {
      Source source = new Tables().table(name).source();
      assertEquals(
          source.standing() != Standing.COMMON_PRACTICE,
          run.out().contains("  " + source.citation() + "\n"),
          name);
    }
  }

  @Test
  void theVersionBeginsWithTheProgramAndItsNumber() {
    assertTrue(run.out().startsWith("wallbook "), run.out());
  }
}
