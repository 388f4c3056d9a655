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

  /** Joins two sources of one result: what both cite, each once, and the weaker standing. */
  public Source and(Source other) {
    StringBuilder joined = new StringBuilder(citation);
    for (String part : other.citation.split("; ")) {
      if (!citation.contains(part)) {
        joined.append("; ").append(part);
      }
    }
    return new Source(joined.toString(), standing.weaker(other.standing));
  }
}
