package wallbook.record;

/** Why something is not as promised. */
public enum ExceptionKind implements Word {
  PROMISED_NOT_THERE,
  DAMAGED_REPLACED,
  DAMAGED_NOT_REPLACED,
  CHANGED,
  NOT_PROVED;
}
