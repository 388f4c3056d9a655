package wallbook.compose;

import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.wording.Wording;

/** Names the built-in cable types in the reader's language; those of a record keep their names. */
public final class CableNames {
  private CableNames() {}

  /** The job as this reader is told of it. */
  public static Job in(Wording wording, Job job) {
    return job.renaming(cable -> named(cable, wording));
  }

  private static Cable named(Cable cable, Wording wording) {
    return cable.named(wording.say("cable-type." + cable.id()));
  }
}
