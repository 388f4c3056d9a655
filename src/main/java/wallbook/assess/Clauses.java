package wallbook.assess;

import java.util.List;
import java.util.NoSuchElementException;
import wallbook.wording.Phrase;

/** Joins clauses of one result into one phrase. */
public final class Clauses {
  private Clauses() {}

  /**
   * All clauses as one, in their order.
   *
   * @throws NoSuchElementException if there is none
   */
  public static Phrase joined(List<Phrase> clauses) {
    return clauses.stream()
        .reduce((first, second) -> Phrase.of("assess.and", "first", first, "second", second))
        .orElseThrow();
  }
}
