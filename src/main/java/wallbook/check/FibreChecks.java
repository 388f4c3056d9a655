package wallbook.check;

import java.util.HashSet;
import java.util.Set;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Fibre;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;

/** What is said of fibres beyond their ends. */
final class FibreChecks implements Check {
  @Override
  public void look(Job job, Findings findings) {
    Set<String> described = new HashSet<>();
    for (Fibre fibre : job.fibres()) {
      Run run = job.run(fibre.run());
      Medium medium = job.cableOf(run).medium();
      if (medium != Medium.FIBRE) {
        findings.add(
            RunFinding.of(
                    Severity.ERROR,
                    "fibre-entry-on-other-run",
                    fibre.origin().position("run"),
                    run,
                    "medium",
                    Words.of("medium", medium))
                .found(run.id()));
      }
      if (!described.add(run.id())) {
        findings.add(
            RunFinding.of(Severity.ERROR, "two-fibre-entries", fibre.origin().position("run"), run)
                .found(run.id()));
      }
      if (medium == Medium.FIBRE && !run.isTerminated() && fibre.whereFound().isEmpty()) {
        findings.add(
            RunFinding.of(
                Severity.REMARK, "loose-fibre-not-described", fibre.origin().position(), run));
      }
    }
  }
}
