package wallbook.record;

/** State of a run at handover. */
public enum RunCondition implements Word {
  IN_SERVICE,
  DARK,
  DAMAGED,
  ABANDONED;
}
