package wallbook.finding;

/** What a finding stands in the way of, the gravest first. */
public enum Severity {
  /** The record can't be understood or contradicts itself: no package is made. */
  ERROR,
  /** The package is made, but this should be settled before anyone signs. */
  WARNING,
  /** Worth knowing; nothing is wrong. */
  REMARK
}
