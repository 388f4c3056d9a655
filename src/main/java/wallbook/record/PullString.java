package wallbook.record;

/** Whether a pull string lies in a conduit. */
public enum PullString implements Word {
  BOTH_ENDS,
  ONE_END,
  NONE,
  UNKNOWN;
}
