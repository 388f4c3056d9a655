package wallbook.reference;

/** How far a figure may be trusted, as printed beside every result that rests on it. */
public enum Standing {
  /** Seen in a second published place besides the standard or handbook named. */
  CONFIRMED("confirmed"),
  /** Follows by arithmetic from confirmed figures. */
  DERIVED("derived"),
  /** Written down from memory of the standard named; not yet confirmed. */
  FROM_MEMORY("from memory"),
  /** Custom of the trade; no standard says so. */
  COMMON_PRACTICE("common practice, no source");

  private final String text;

  Standing(String text) {
    this.text = text;
  }

  /** The words used in the tables. */
  public String text() {
    return text;
  }

  /**
   * The standing of the given words.
   *
   * @throws IllegalArgumentException if the words name none
   */
  public static Standing of(String text) {
    for (Standing standing : values()) {
      if (standing.text.equals(text)) {
        return standing;
      }
    }
    throw new IllegalArgumentException("no such standing: '" + text + "'");
  }

  /** The weaker of two standings; a result is as good as its weakest figure. */
  public Standing weaker(Standing other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
