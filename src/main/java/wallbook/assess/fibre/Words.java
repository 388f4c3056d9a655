package wallbook.assess.fibre;

import java.util.List;
import wallbook.wording.Phrase;

/** Joins clauses of one result. */
final class Words {
  private Words() {}

  /** All clauses as one, in their order. */
  static Phrase all(List<Phrase> clauses) {
    return clauses.stream()
        .reduce((first, second) -> Phrase.of("fibre.and", "first", first, "second", second))
        .orElseThrow();
  }
}
