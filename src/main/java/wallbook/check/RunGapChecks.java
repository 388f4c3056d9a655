package wallbook.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.ExceptionItem;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunTest;

/** What is missing for a run: a test, an exception, a stand-in, a purpose. */
final class RunGapChecks implements Check {
  private static final Set<Medium> CARRY_DATA =
      Set.of(Medium.BALANCED_PAIR, Medium.FIBRE, Medium.COAX);

  @Override
  public boolean needsWholeRecord() {
    return true;
  }

  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    Set<String> excepted = new HashSet<>();
    job.exceptions().stream().map(ExceptionItem::run).forEach(id -> id.ifPresent(excepted::add));
    for (Run run : job.runs()) {
      checkTested(job, run, findings);
      if (!excepted.contains(run.id())) {
        checkFailures(job, run, findings);
        checkStandIn(run, findings);
      }
      checkPurpose(run, findings);
      checkLength(run, findings);
    }
  }

  private static void checkTested(Job job, Run run, Findings findings) {
    boolean terminatedData =
        run.condition() == RunCondition.DARK
            && run.isTerminated()
            && CARRY_DATA.contains(job.cableOf(run).medium());
    if ((run.condition() == RunCondition.IN_SERVICE || terminatedData)
        && job.testsOf(run).isEmpty()) {
      findings.add(
          RunFinding.of(Severity.WARNING, "run-without-test", run.origin().position(), run));
    }
  }

  private static void checkFailures(Job job, Run run, Findings findings) {
    if (run.condition() != RunCondition.IN_SERVICE && run.condition() != RunCondition.DARK) {
      return;
    }
    List<RunTest> failures = TestHistory.standingFailures(job.testsOf(run));
    for (RunTest test : failures) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "failed-test-without-exception",
                  test.origin().position("result"),
                  run,
                  "date",
                  test.date())
              .found(test.result().word()));
    }
  }

  private static void checkStandIn(Run run, Findings findings) {
    if (run.condition() == RunCondition.DAMAGED && run.standIn().isEmpty()) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "damaged-run-without-stand-in",
                  run.origin().position("condition"),
                  run)
              .found(run.condition().word()));
    }
  }

  private static void checkPurpose(Run run, Findings findings) {
    if (run.condition() == RunCondition.IN_SERVICE
        && run.system().isEmpty()
        && run.serves().isEmpty()) {
      findings.add(
          RunFinding.of(Severity.REMARK, "run-without-purpose", run.origin().position(), run));
    }
  }

  private static void checkLength(Run run, Findings findings) {
    boolean ofUse =
        run.condition() == RunCondition.IN_SERVICE || run.condition() == RunCondition.DARK;
    if (ofUse && run.length().isEmpty()) {
      findings.add(
          RunFinding.of(Severity.REMARK, "run-without-length", run.origin().position(), run));
    }
  }
}
