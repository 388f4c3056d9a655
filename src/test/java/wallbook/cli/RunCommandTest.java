package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Approval;

class RunCommandTest {
  private static final String LAKESIDE = "sample-jobs/lakeside/job.yaml";
  private static final String FLAT = "sample-jobs/flat/job.yaml";
  private static final String BROKEN = "sample-jobs/broken/job.yaml";

  @Test
  void theViewOfAFibreThatWaitsIsAsApproved() {
    Run run = run("run", FLAT, "L-04");

    assertEquals(ExitCode.CLEAN, run.exitCode);
    assertEquals("", run.err);
    Approval.verify("flat/run-l-04.txt", run.out);
  }

  @ParameterizedTest
  @ValueSource(strings = {"GRT-05", "grt-05", "Grt-05"})
  void aCableIsFoundByLabelOrId(String label) {
    assertTrue(run("run", LAKESIDE, label).out.startsWith("GRT-05: "));
  }

  @Test
  void bothEndsPortsTestsAndConduitsAreShown() {
    String out = run("run", LAKESIDE, "GRT-01").out.replaceAll("\\s+", " ");

    assertTrue(out.contains("Equipment rack, Patch panel 1: rooms, port 1"), out);
    assertTrue(out.contains("Great room, Television plate, jack 1"), out);
    assertTrue(out.contains("C-04 (Conduit from the rack to the great room television)"), out);
    assertTrue(out.contains("certification passed"), out);
    assertTrue(out.contains("T568B"), out);
  }

  @Test
  void aDeadCableSaysSoAndWhatStandsInForIt() {
    String out = run("run", LAKESIDE, "TER-02").out.replaceAll("\\s+", " ");

    assertTrue(out.contains("dead (damaged)"), out);
    assertTrue(out.contains("stand-in TER-03"), out);
    assertTrue(out.contains("no 10 Gb/s network (10GBASE-T): the cable is damaged"), out);
  }

  @Test
  void noLineIsWiderThanATerminalUnlessOneWordIs() {
    run("run", LAKESIDE, "GST-04")
        .out
        .lines()
        .forEach(line -> assertTrue(line.length() <= 100, line));
  }

  @Test
  void anUnknownCableIsAnsweredWithTheNearest() {
    Run run = run("run", LAKESIDE, "GRT-O5");

    assertEquals(ExitCode.USAGE, run.exitCode);
    assertEquals("", run.out);
    assertTrue(run.err.contains("did you mean: GRT-05"), run.err);
  }

  @Test
  void aRecordWithErrorsIsNotShown() {
    assertEquals(ExitCode.ERRORS, run("run", BROKEN, "K-01").exitCode);
  }

  @Test
  void aCableMustBeNamed() {
    assertEquals(ExitCode.USAGE, run("run", FLAT).exitCode);
  }

  private record Run(int exitCode, String out, String err) {}

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), false, arguments);
    return new Run(code, out.toString().replace("\r\n", "\n"), err.toString());
  }
}
