package wallbook.compose;

/** Whose hands a document is made for, and so what it may tell and carry. */
public enum Disclosure {
  /** For the household and its technician: tells everything and carries the whole record. */
  HOUSEHOLD,
  /** Leaves the household: tells its reader's part and no more, and carries an extract of it. */
  OUTSIDE,
  /** For the owner alone: may be locked with a password. */
  OWNER_ALONE;

  /** Whether the whole record goes inside the document; else an extract does. */
  public boolean carriesWholeRecord() {
    return this != OUTSIDE;
  }
}
