package wallbook.record;

/** Kind of place where runs come home. */
public enum HeadKind implements Word {
  RACK,
  STRUCTURED_PANEL,
  DEMARCATION,
  OTHER;
}
