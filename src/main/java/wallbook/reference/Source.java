package wallbook.reference;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Where a figure comes from, as printed beside a result.
 *
 * @param citation standard or handbook with edition and clause, for instance {@code IEEE 802.3-2022
 *     clause 52}
 * @param standing how far the figure may be trusted
 */
public record Source(String citation, Standing standing) {
  private static final String SEPARATOR = "; ";
  private static final int MOST_KEPT = 5_000;
  private static final Map<Pair, Source> JOINED = new ConcurrentHashMap<>();

  public Source {
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source without a citation");
    }
  }

  /** Joins two sources of one result: what both cite, each once, and the weaker standing. */
  public Source and(Source other) {
    // The same few are joined for each cable of a house.
    Pair pair = new Pair(this, other);
    Source known = JOINED.get(pair);
    if (known == null) {
      known = joined(other);
      if (JOINED.size() < MOST_KEPT) {
        JOINED.put(pair, known);
      }
    }
    return known;
  }

  /** Two sources to join, found by what they cite. */
  private record Pair(Source first, Source second) {
    @Override
    public int hashCode() {
      return 31 * first.citation.hashCode() + second.citation.hashCode();
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Pair pair && first.isSame(pair.first) && second.isSame(pair.second);
    }
  }

  private boolean isSame(Source other) {
    return standing == other.standing && citation.equals(other.citation);
  }

  private Source joined(Source other) {
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
