package wallbook.assess;

/** What a comparison with a limit comes to. */
public enum Verdict {
  /** Within the limit. */
  WITHIN,
  /**
   * Within the limit, but only under conditions that the assumptions name, or within an
   * instrument's accuracy.
   */
  CONDITIONAL,
  /** Beyond the limit, or impossible for the reason given. */
  BEYOND,
  /** The record lacks what the computation needs; nothing is claimed. */
  NOT_STATED,
  /** A value computed for information; nothing to compare it with. */
  INFORMATION
}
