package wallbook.check;

import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.ExceptionItem;
import wallbook.record.ExceptionKind;
import wallbook.record.Job;
import wallbook.record.RunCondition;

/** What is not as promised: what it names, what stands in, whether the owner agreed. */
final class ExceptionChecks implements Check {
  @Override
  public void look(Job job, Findings findings) {
    for (ExceptionItem exception : job.exceptions()) {
      boolean namesSomething =
          exception.run().isPresent()
              || exception.conduit().isPresent()
              || exception.place().isPresent()
              || exception.system().isPresent();
      if (!namesSomething) {
        add("exception-names-nothing", exception, "what", findings);
      }
      if (exception.kind() == ExceptionKind.DAMAGED_REPLACED && exception.standsIn().isEmpty()) {
        add("replacement-not-described", exception, "kind", findings);
      }
      if (exception.agreed().isEmpty()) {
        add("exception-not-agreed", exception, "what", findings);
      }
      checkRunState(job, exception, findings);
    }
  }

  private static void checkRunState(Job job, ExceptionItem exception, Findings findings) {
    exception
        .run()
        .map(job::run)
        .filter(run -> exception.kind() == ExceptionKind.DAMAGED_NOT_REPLACED)
        .filter(run -> run.condition() == RunCondition.IN_SERVICE)
        .ifPresent(
            run ->
                findings.add(
                    RunFinding.of(
                            Severity.ERROR,
                            "damaged-run-in-service",
                            run.origin().position("condition"),
                            run,
                            "line",
                            exception.origin().position("kind").line())
                        .found(run.condition().word())));
  }

  private static void add(String name, ExceptionItem exception, String key, Findings findings) {
    findings.add(
        Finding.of(
            Severity.WARNING, name, exception.origin().position(key), "what", exception.what()));
  }
}
