package wallbook.check;

import wallbook.finding.Findings;
import wallbook.record.Job;

/** Looks at one subject of a job. */
interface Check {
  /** Adds what it finds; throws nothing, whatever a job that was read may hold. */
  void look(Job job, Findings findings);

  /**
   * Whether it concludes from something not being there. Such a check is left out where only part
   * of the record could be read, since what it misses may be in the other part.
   */
  default boolean needsWholeRecord() {
    return false;
  }

  /** Whether what it finds may be an error. The others can wait where only errors matter. */
  default boolean findsErrors() {
    return true;
  }
}
