package wallbook.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.PairCategory;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunTest;
import wallbook.record.TestKind;
import wallbook.record.TestResult;
import wallbook.wording.Phrase;

/** What a test says of itself and of its run. */
final class TestChecks implements Check {
  private static final List<String> STRAIGHT =
      IntStream.rangeClosed(1, 8).mapToObj(Integer::toString).toList();
  private static final String PIN = "[1-8]|open";

  private final Ratio lengthDifference;

  TestChecks(CheckFigures figures) {
    this.lengthDifference = figures.share("measured-length");
  }

  @Override
  public void look(Job job, Findings findings) {
    for (RunTest test : job.tests()) {
      Run run = job.run(test.run());
      checkWireMap(run, test, findings);
      checkResult(run, test, findings);
      checkEndsAllowIt(job, run, test, findings);
      checkValues(run, test, findings);
      checkLength(run, test, findings);
      checkCategory(job, run, test, findings);
      checkFibreNumbers(job, run, test, findings);
    }
    job.runs().forEach(run -> checkDamagedRunPasses(job, run, findings));
  }

  private static void checkWireMap(Run run, RunTest test, Findings findings) {
    List<String> map = test.wireMap();
    for (int i = 0; i < map.size(); i++) {
      if (!map.get(i).matches(PIN)) {
        findings.add(
            Finding.of(
                    Severity.ERROR,
                    "unknown-pin",
                    test.origin().position("wire_map", i),
                    "run",
                    run.label(),
                    "found",
                    map.get(i))
                .found(map.get(i))
                .expecting(Phrase.of("expected.pin")));
      }
    }
    if (!map.isEmpty() && map.size() != STRAIGHT.size()) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "wire-map-of-other-length",
                  test.origin().position("wire_map"),
                  "run",
                  run.label(),
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
          Finding.of(
              Severity.REMARK,
              "failed-test-without-reason",
              test.origin().position("result"),
              "run",
              run.label()));
    }
  }

  private static void contradicts(
      Run run, RunTest test, String key, String fault, Findings findings) {
    findings.add(
        Finding.of(
            Severity.ERROR,
            "test-contradicts-itself",
            test.origin().position(key),
            "run",
            run.label(),
            "fault",
            Phrase.of(fault)));
  }

  private static void checkEndsAllowIt(Job job, Run run, RunTest test, Findings findings) {
    if (run.isTerminated()) {
      return;
    }
    Medium medium = job.cableOf(run).medium();
    boolean needsBothEnds =
        test.kind() == TestKind.LIGHT_SOURCE
            || test.kind() == TestKind.CERTIFICATION
            || test.kind() == TestKind.QUALIFICATION;
    if (!needsBothEnds) {
      return;
    }
    if (medium == Medium.FIBRE) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "unterminated-fibre-called-tested",
                  test.origin().position("kind"),
                  "run",
                  run.label(),
                  "kind",
                  Words.of("test-kind", test.kind()))
              .found(test.kind().word()));
    } else {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "unterminated-run-called-tested",
                  test.origin().position("kind"),
                  "run",
                  run.label(),
                  "kind",
                  Words.of("test-kind", test.kind()))
              .found(test.kind().word()));
    }
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
          Finding.of(
                  Severity.WARNING,
                  "test-without-values",
                  test.origin().position(),
                  "run",
                  run.label(),
                  "kind",
                  Words.of("test-kind", test.kind()),
                  "keys",
                  missing)
              .expecting(Phrase.of("expected.key", "key", missing)));
    }
  }

  private void checkLength(Run run, RunTest test, Findings findings) {
    if (run.length().isEmpty() || test.length().isEmpty()) {
      return;
    }
    Length recorded = run.length().get();
    Length measured = test.length().get();
    double apart = Math.abs(measured.inMetres() - recorded.inMetres());
    if (apart > recorded.inMetres() * lengthDifference.inPercent() / 100 + 1e-9) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "measured-length-differs",
              test.origin().position("length"),
              "run",
              run.label(),
              "measured",
              measured,
              "recorded",
              recorded,
              "share",
              lengthDifference));
    }
  }

  private static void checkCategory(Job job, Run run, RunTest test, Findings findings) {
    Optional<PairCategory> cable = job.cableOf(run).category();
    Optional<PairCategory> limit = test.limit().map(l -> l.category());
    if (limit.isPresent() && cable.isPresent() && limit.get().compareTo(cable.get()) < 0) {
      findings.add(
          Finding.of(
                  Severity.REMARK,
                  "limit-below-category",
                  test.limit().get().origin().position("category"),
                  "run",
                  run.label(),
                  "limit",
                  Words.of("pair-category", limit.get()),
                  "category",
                  Words.of("pair-category", cable.get()))
              .found(limit.get().word())
              .nearest(cable.map(PairCategory::word)));
    }
  }

  private static void checkFibreNumbers(Job job, Run run, RunTest test, Findings findings) {
    job.cableOf(run)
        .fibres()
        .ifPresent(
            count ->
                test.losses().stream()
                    .filter(loss -> loss.fibre().filter(n -> n > count).isPresent())
                    .forEach(
                        loss ->
                            findings.add(
                                Finding.of(
                                        Severity.ERROR,
                                        "fibre-beyond-cable",
                                        loss.origin().position("fibre"),
                                        "run",
                                        run.label(),
                                        "fibre",
                                        loss.fibre().get(),
                                        "count",
                                        count)
                                    .found(loss.fibre().get().toString())
                                    .expecting(Phrase.of("expected.at-most", "limit", count)))));
  }

  private static void checkDamagedRunPasses(Job job, Run run, Findings findings) {
    List<RunTest> tests = job.testsOf(run);
    if (run.condition() != RunCondition.DAMAGED || tests.isEmpty()) {
      return;
    }
    RunTest last = TestHistory.latest(tests);
    if (last.result() == TestResult.PASS) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "damaged-run-passed-test",
                  last.origin().position("result"),
                  "run",
                  run.label(),
                  "date",
                  last.date())
              .found(last.result().word()));
    }
  }
}
