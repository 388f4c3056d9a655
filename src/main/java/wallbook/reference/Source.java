package wallbook.reference;

/**
 * Where a figure comes from, as printed beside a result.
 *
 * @param citation standard or handbook with edition and clause, for instance {@code IEEE 802.3-2022
 *     clause 52}
 * @param standing how far the figure may be trusted
 */
public record Source(String citation, Standing standing) {
  private static final String SEPARATOR = "; ";

  public Source {
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source without a citation");
    }
  }

  /** Joins two sources of one result: what both cite, each once, and the weaker standing. */
  public Source and(Source other) {
    Standing weaker = standing.weaker(other.standing);
    if (citation.contains(other.citation)) {
      return weaker == standing ? this : new Source(citation, weaker);
    }
    StringBuilder joined = new StringBuilder(citation);
    int begin = 0;
    while (begin <= other.citation.length()) {
      int separator = other.citation.indexOf(SEPARATOR, begin);
      int end = separator < 0 ? other.citation.length() : separator;
      String part = other.citation.substring(begin, end);
      if (!citation.contains(part)) {
        joined.append(SEPARATOR).append(part);
      }
      begin = end + SEPARATOR.length();
    }
    return new Source(joined.toString(), weaker);
  }
}
