package wallbook.check;

import java.util.List;
import java.util.stream.IntStream;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.record.TestResult;
import wallbook.wording.Phrase;

/** What a test says of itself. */
final class TestChecks implements Check {
  private static final List<String> STRAIGHT =
      IntStream.rangeClosed(1, 8).mapToObj(Integer::toString).toList();
  private static final String PIN = "[1-8]|open";

  @Override
  public void look(Job job, Findings findings) {
    for (RunTest test : job.tests()) {
      Run run = job.run(test.run());
      checkWireMap(run, test, findings);
      checkResult(run, test, findings);
      checkValues(run, test, findings);
    }
  }

  private static void checkWireMap(Run run, RunTest test, Findings findings) {
    List<String> map = test.wireMap();
    for (int i = 0; i < map.size(); i++) {
      if (!map.get(i).matches(PIN)) {
        findings.add(
            RunFinding.of(
                    Severity.ERROR,
                    "unknown-pin",
                    test.origin().position("wire_map", i),
                    run,
                    "found",
                    map.get(i))
                .found(map.get(i))
                .expecting(Phrase.of("expected.pin")));
      }
    }
    if (!map.isEmpty() && map.size() != STRAIGHT.size()) {
      findings.add(
          RunFinding.of(
                  Severity.ERROR,
                  "wire-map-of-other-length",
                  test.origin().position("wire_map"),
                  run,
                  "count",
                  map.size())
              .found(Integer.toString(map.size())));
    }
  }

  private static void checkResult(Run run, RunTest test, Findings findings) {
    if (test.result() == TestResult.PASS) {
      if (!test.wireMap().isEmpty() && !test.wireMap().equals(STRAIGHT)) {
        contradicts(run, test, "wire_map", "fault.wire-map", findings);
      } else if (!test.shorts().isEmpty()) {
        contradicts(run, test, "shorts", "fault.shorts", findings);
      } else if (!test.splitPairs().isEmpty()) {
        contradicts(run, test, "split_pairs", "fault.split-pairs", findings);
      } else if (test.worst().stream()
          .anyMatch(w -> w.margin().filter(m -> m.inDecibels() < 0).isPresent())) {
        contradicts(run, test, "worst", "fault.negative-margin", findings);
      }
    }
    boolean faultNamed =
        test.reason().isPresent()
            || !test.wireMap().isEmpty()
            || !test.shorts().isEmpty()
            || !test.splitPairs().isEmpty()
            || !test.worst().isEmpty()
            || !test.losses().isEmpty()
            || test.sweep().isPresent();
    if (test.result() == TestResult.FAIL && !faultNamed) {
      findings.add(
          RunFinding.of(
              Severity.REMARK,
              "failed-test-without-reason",
              test.origin().position("result"),
              run));
    }
  }

  private static void contradicts(
      Run run, RunTest test, String key, String fault, Findings findings) {
    findings.add(
        RunFinding.of(
            Severity.ERROR,
            "test-contradicts-itself",
            test.origin().position(key),
            run,
            "fault",
            Phrase.of(fault)));
  }

  private static void checkValues(Run run, RunTest test, Findings findings) {
    String missing =
        switch (test.kind()) {
          case LENGTH -> test.length().isEmpty() ? "length" : "";
          case RESISTANCE -> test.loopResistance().isEmpty() ? "loop_resistance" : "";
          case LIGHT_SOURCE -> test.losses().isEmpty() ? "losses" : "";
          case CERTIFICATION ->
              test.worst().isEmpty() && test.losses().isEmpty() && test.sweep().isEmpty()
                  ? "worst, sweep"
                  : "";
          default -> "";
        };
    if (!missing.isEmpty()) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "test-without-values",
                  test.origin().position(),
                  run,
                  "kind",
                  Words.of("test-kind", test.kind()),
                  "keys",
                  missing)
              .expecting(Phrase.of("expected.key", "key", missing)));
    }
  }
}
