package wallbook.compose;

import java.util.Optional;
import wallbook.record.ExceptionItem;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Why a run carries nothing, and what stands in for it, as far as the record says. */
public final class Damage {
  private final Job job;
  private final Wording wording;

  public Damage(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
  }

  /** What is recorded of the cause: an exception, a test's reason, a note. */
  public String why(Run run) {
    return exception(run)
        .map(ExceptionItem::what)
        .or(() -> job.testsOf(run).stream().flatMap(t -> t.reason().stream()).findFirst())
        .or(run::note)
        .orElseGet(() -> wording.say("not-recorded"));
  }

  /** The run or the thing that replaces it. */
  public String standsIn(Run run) {
    return run.standIn()
        .map(id -> wording.say(Phrase.of("manual.stands-in-run", "label", job.run(id).label())))
        .or(() -> exception(run).flatMap(ExceptionItem::standsIn))
        .orElseGet(() -> wording.say("manual.nothing-stands-in"));
  }

  private Optional<ExceptionItem> exception(Run run) {
    return job.exceptions().stream().filter(e -> e.run().equals(Optional.of(run.id()))).findFirst();
  }
}
