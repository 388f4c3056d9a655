package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import wallbook.Approval;

class WishCommandTest {
  private static final String LAKESIDE = "sample-jobs/lakeside/job.yaml";
  private static final String FLAT = "sample-jobs/flat/job.yaml";
  private static final String BROKEN = "sample-jobs/broken/job.yaml";

  @Test
  void withoutAWishTheWishesAreListed() {
    Run run = run("wish", FLAT);

    assertEquals(ExitCode.CLEAN, run.exitCode);
    assertTrue(run.out.contains("more-wifi"), run.out);
    assertTrue(run.out.contains("move-the-rack"), run.out);
  }

  @Test
  void theWaysAtAPlaceAreAsApproved() {
    Run run = run("wish", FLAT, "--wish", "better-picture", "--at", "Living room with kitchen");

    assertEquals(ExitCode.CLEAN, run.exitCode);
    assertEquals("", run.err);
    Approval.verify("flat/wish-better-picture.txt", run.out);
  }

  @Test
  void aPlaceIsFoundByIdByLabelOrByTheNameOfItsSpace() {
    assertHeading("Great room, Television plate", "grt-tv");
    assertHeading("Great room, Television plate", "GRT-A");
    assertHeading("Great room", "great-room");
    assertHeading("Great room", "Great Room");
  }

  private static void assertHeading(String where, String at) {
    String out = run("wish", LAKESIDE, "--wish", "more-wifi", "--at", at).out;
    String heading = out.lines().findFirst().get();
    assertTrue(heading.endsWith(where), heading);
  }

  @Test
  void withoutAPlaceEveryRoomIsAnswered() {
    String out = run("wish", LAKESIDE, "--wish", "motorised-shades").out;

    assertTrue(out.contains("motorised shades: Great room"), out);
    assertTrue(out.contains("motorised shades: Office"), out);
    assertTrue(out.contains("no way without opening a wall"), out);
    assertTrue(out.contains("shades with battery"), out);
  }

  @Test
  void anUnknownWishIsAnsweredWithTheNearest() {
    Run run = run("wish", FLAT, "--wish", "more-wify");

    assertEquals(ExitCode.USAGE, run.exitCode);
    assertEquals("", run.out);
    assertTrue(run.err.contains("did you mean: more-wifi"), run.err);
  }

  @Test
  void anUnknownPlaceIsAnsweredWithTheNearest() {
    Run run = run("wish", LAKESIDE, "--wish", "more-wifi", "--at", "grt-tw");

    assertEquals(ExitCode.USAGE, run.exitCode);
    assertTrue(run.err.contains("did you mean: grt-tv"), run.err);
  }

  @Test
  void aRecordWithErrorsIsNotAnswered() {
    Run run = run("wish", BROKEN, "--wish", "more-wifi");

    assertEquals(ExitCode.ERRORS, run.exitCode);
    assertEquals("", run.out);
    assertTrue(run.err.contains("has errors"), run.err);
  }

  @Test
  void theAnswerComesInTheUnitsAndLanguageAskedFor() {
    String out =
        run(
                "wish",
                FLAT,
                "--wish",
                "more-wifi",
                "--units",
                "feet_and_inches",
                "--language",
                "es-US")
            .out;

    assertTrue(out.contains("más Wi-Fi"), out);
    assertTrue(out.contains("\u00a0ft"), out);
  }

  @Test
  void helpTellsHowToAsk() {
    Run run = run("wish", "--help");

    assertEquals(ExitCode.CLEAN, run.exitCode);
    assertTrue(run.out.contains("--wish more-wifi --at kitchen"), run.out);
  }

  private record Run(int exitCode, String out, String err) {}

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), false, arguments);
    return new Run(code, out.toString().replace("\r\n", "\n"), err.toString());
  }
}
