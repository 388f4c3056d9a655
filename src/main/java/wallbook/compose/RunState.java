package wallbook.compose;

import wallbook.record.Run;

/** What a reader needs to know first about a cable. */
public enum RunState {
  /** In service. */
  WORKS,
  /** Whole and terminated, waiting. */
  DARK,
  /** Whole, waiting, with an end still to be terminated. */
  UNFINISHED,
  /** Damaged; carries nothing. */
  DEAD,
  /** Given up. */
  RETIRED;

  /** The state of a run. */
  public static RunState of(Run run) {
    return switch (run.condition()) {
      case IN_SERVICE -> WORKS;
      case DARK -> run.isTerminated() ? DARK : UNFINISHED;
      case DAMAGED -> DEAD;
      case ABANDONED -> RETIRED;
    };
  }

  /** Whether the cable waits for a later use. */
  public boolean isDark() {
    return this == DARK || this == UNFINISHED;
  }

  /** Whether the cable will carry nothing again: damaged or given up. */
  public boolean carriesNothing() {
    return this == DEAD || this == RETIRED;
  }
}
