package wallbook.record;

/** State of a conduit at handover. */
public enum ConduitCondition implements Word {
  CLEAR,
  UNKNOWN,
  CRUSHED,
  BLOCKED;
}
