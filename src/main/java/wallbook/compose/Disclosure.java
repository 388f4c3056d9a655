package wallbook.compose;

/** Whose hands a document is made for, and so what it may tell and carry. */
public enum Disclosure {
  /** For the household and its technician: tells everything and carries the record. */
  HOUSEHOLD,
  /**
   * Leaves the household: tells its reader's part and no more, and does not carry the record, which
   * would tell the rest.
   */
  OUTSIDE,
  /** For the owner alone: may be locked with a password. */
  OWNER_ALONE;

  /** Whether the record goes inside the document. */
  public boolean carriesRecord() {
    return this != OUTSIDE;
  }
}
