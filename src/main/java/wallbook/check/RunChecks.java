package wallbook.check;

import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunEnd;

/** What a run says of itself. */
final class RunChecks implements Check {
  @Override
  public void look(Job job, Findings findings) {
    for (Run run : job.runs()) {
      checkEnds(run, findings);
      checkReason(run, findings);
      checkStandIn(job, run, findings);
      checkSlack(run, findings);
      checkFeed(job, run, findings);
    }
  }

  private static void checkEnds(Run run, Findings findings) {
    RunEnd from = run.from();
    RunEnd to = run.to();
    boolean samePlace = from.place().isPresent() && from.place().equals(to.place());
    boolean samePort =
        from.head().isPresent()
            && from.head().equals(to.head())
            && from.panel().equals(to.panel())
            && from.port().equals(to.port());
    if (samePlace || samePort) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "run-ends-where-it-begins",
                  to.origin().position(samePlace ? "place" : "head"),
                  "run",
                  run.label())
              .found(to.place().or(to::head).orElseThrow()));
    }
    if (run.condition() == RunCondition.IN_SERVICE && !run.isTerminated()) {
      RunEnd loose = from.isTerminated() ? to : from;
      findings.add(
          RunFinding.of(
                  Severity.WARNING, "loose-run-in-service", loose.origin().position("finish"), run)
              .found(loose.finish().word()));
    }
  }

  private static void checkReason(Run run, Findings findings) {
    if (run.condition() == RunCondition.DARK && run.darkReason().isEmpty()) {
      findings.add(
          RunFinding.of(
              Severity.WARNING,
              "dark-run-without-reason",
              run.origin().position("condition"),
              run));
    }
    if (run.condition() == RunCondition.IN_SERVICE && run.darkReason().isPresent()) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "reason-without-dark-run",
                  run.origin().position("dark_reason"),
                  run)
              .found(run.condition().word()));
    }
  }

  private static void checkStandIn(Job job, Run run, Findings findings) {
    Optional<Run> standIn = run.standIn().map(job::run);
    if (standIn.isEmpty()) {
      return;
    }
    if (run.condition() != RunCondition.DAMAGED && run.condition() != RunCondition.ABANDONED) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "stand-in-for-sound-run",
                  run.origin().position("stand_in"),
                  run,
                  "other",
                  standIn.get().label())
              .found(run.condition().word()));
    }
    RunCondition other = standIn.get().condition();
    if (standIn.get().id().equals(run.id())
        || other == RunCondition.DAMAGED
        || other == RunCondition.ABANDONED) {
      findings.add(
          RunFinding.of(
                  Severity.ERROR,
                  "stand-in-unfit",
                  run.origin().position("stand_in"),
                  run,
                  "other",
                  standIn.get().label())
              .found(standIn.get().id()));
    }
  }

  private static void checkSlack(Run run, Findings findings) {
    Length none = Length.metres(0);
    Length slack = run.from().slack().orElse(none).plus(run.to().slack().orElse(none));
    run.length()
        .filter(length -> slack.compareTo(length) > 0)
        .ifPresent(
            length ->
                findings.add(
                    RunFinding.of(
                        Severity.ERROR,
                        "slack-beyond-length",
                        run.origin().position("length"),
                        run,
                        "slack",
                        slack,
                        "length",
                        length)));
  }

  private static void checkFeed(Job job, Run run, Findings findings) {
    run.feed()
        .ifPresent(
            feed -> {
              if (feed.current().isEmpty() && feed.power().isEmpty()) {
                findings.add(
                    RunFinding.of(
                        Severity.WARNING, "feed-without-load", feed.origin().position(), run));
              }
              Conductors.check(
                  run, job.cableOf(run), feed.conductorsInParallel(), feed.origin(), findings);
            });
  }
}
