package wallbook.reference;

/**
 * Where a figure comes from, as printed beside a result.
 *
 * @param citation standard or handbook with edition and clause, for instance {@code IEEE 802.3-2022
 *     clause 52}
 * @param standing how far the figure may be trusted
 */
public record Source(String citation, Standing standing) {
  public Source {
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source without a citation");
    }
  }

  /** Joins two sources of one result: both citations, the weaker standing. */
  public Source and(Source other) {
    String joined = citation.contains(other.citation) ? citation : citation + "; " + other.citation;
    return new Source(joined, standing.weaker(other.standing));
  }
}
