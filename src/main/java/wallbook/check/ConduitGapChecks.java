package wallbook.check;

import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.ExceptionItem;
import wallbook.record.Job;
import wallbook.record.PullString;

/** What is missing for a conduit: a proof, a pull string, its path, an exception. */
final class ConduitGapChecks implements Check {
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
    for (Conduit conduit : job.conduits()) {
      boolean unfit =
          conduit.condition() == ConduitCondition.CRUSHED
              || conduit.condition() == ConduitCondition.BLOCKED;
      if (unfit) {
        checkException(job, conduit, findings);
      } else {
        checkProved(conduit, findings);
        checkString(conduit, findings);
      }
      if (conduit.path().isEmpty()) {
        add(Severity.REMARK, "conduit-without-path", conduit, "path", findings);
      }
    }
  }

  private static void checkException(Job job, Conduit conduit, Findings findings) {
    boolean excepted =
        job.exceptions().stream()
            .map(ExceptionItem::conduit)
            .anyMatch(id -> id.filter(conduit.id()::equals).isPresent());
    if (!excepted) {
      add(Severity.WARNING, "unfit-conduit-without-exception", conduit, "condition", findings);
    }
  }

  private static void checkProved(Conduit conduit, Findings findings) {
    if (conduit.spare().orElse(false) && conduit.proved().isEmpty()) {
      add(Severity.WARNING, "spare-conduit-never-proved", conduit, "spare", findings);
    }
  }

  private static void checkString(Conduit conduit, Findings findings) {
    if (conduit.pullString() == PullString.NONE || conduit.pullString() == PullString.UNKNOWN) {
      add(Severity.REMARK, "conduit-without-pull-string", conduit, "pull_string", findings);
    }
  }

  private static void add(
      Severity severity, String name, Conduit conduit, String key, Findings findings) {
    findings.add(
        Finding.of(severity, name, conduit.origin().position(key), "conduit", conduit.label()));
  }
}
