package wallbook.compose;

import java.time.LocalDate;
import java.util.Optional;
import wallbook.record.JobFacts;
import wallbook.record.Revision;

/** The issue of a record that documents are marked with. */
public final class Issue {
  private Issue() {}

  /**
   * The day of the present revision: by the history, else the handover. A record that passed the
   * checks has one of them.
   */
  public static Optional<LocalDate> date(JobFacts facts) {
    return facts.history().stream()
        .filter(r -> r.revision() == facts.revision())
        .map(Revision::date)
        .findFirst()
        .or(facts::handover);
  }
}
