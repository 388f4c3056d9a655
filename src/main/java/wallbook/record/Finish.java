package wallbook.record;

/** How the end of a run was left. */
public enum Finish implements Word {
  TERMINATED,
  COILED,
  CAPPED,
  CUT,
  UNKNOWN;
}
