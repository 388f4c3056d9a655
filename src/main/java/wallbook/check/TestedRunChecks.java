package wallbook.check;

import java.util.List;
import java.util.Optional;
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

/** Whether a test agrees with the run that it was made of. */
final class TestedRunChecks implements Check {
  private final Ratio lengthDifference;

  TestedRunChecks(CheckFigures figures) {
    this.lengthDifference = figures.share("measured-length");
  }

  @Override
  public void look(Job job, Findings findings) {
    for (RunTest test : job.tests()) {
      Run run = job.run(test.run());
      checkEndsAllowIt(job, run, test, findings);
      checkLength(run, test, findings);
      checkCategory(job, run, test, findings);
      checkFibreNumbers(job, run, test, findings);
    }
    job.runs().forEach(run -> checkDamagedRunPasses(job, run, findings));
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
          RunFinding.of(
                  Severity.ERROR,
                  "unterminated-fibre-called-tested",
                  test.origin().position("kind"),
                  run,
                  "kind",
                  Words.of("test-kind", test.kind()))
              .found(test.kind().word()));
    } else {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "unterminated-run-called-tested",
                  test.origin().position("kind"),
                  run,
                  "kind",
                  Words.of("test-kind", test.kind()))
              .found(test.kind().word()));
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
          RunFinding.of(
              Severity.WARNING,
              "measured-length-differs",
              test.origin().position("length"),
              run,
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
          RunFinding.of(
                  Severity.REMARK,
                  "limit-below-category",
                  test.limit().get().origin().position("category"),
                  run,
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
                                RunFinding.of(
                                        Severity.ERROR,
                                        "fibre-beyond-cable",
                                        loss.origin().position("fibre"),
                                        run,
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
          RunFinding.of(
                  Severity.WARNING,
                  "damaged-run-passed-test",
                  last.origin().position("result"),
                  run,
                  "date",
                  last.date())
              .found(last.result().word()));
    }
  }
}
