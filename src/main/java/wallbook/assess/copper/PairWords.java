package wallbook.assess.copper;

import java.util.List;
import java.util.Optional;
import wallbook.record.LinkConfiguration;
import wallbook.record.PairParameter;
import wallbook.record.TestLimit;
import wallbook.record.TestStandard;
import wallbook.record.Word;
import wallbook.wording.Phrase;

/** Phrases for the words of the record that balanced pairs need. */
final class PairWords {
  private PairWords() {}

  static Phrase of(PairParameter parameter) {
    return Phrase.of("pairs.parameter." + slug(parameter));
  }

  static Phrase of(LinkConfiguration configuration) {
    return Phrase.of("pairs.configuration." + slug(configuration));
  }

  /** A category by its word, which may be one that no cable of the record has. */
  static Phrase category(String word) {
    return Phrase.of("pairs.category." + word);
  }

  /** Name of the limit of a test, for instance "ANSI/TIA-568.2-D Category 6, permanent link". */
  static Phrase limit(TestLimit limit, String standardName) {
    String kind = limit.standard() == TestStandard.ISO_11801_1 ? "pairs.class." : "pairs.category.";
    return Phrase.of(
        "pairs.limit",
        "standard",
        standardName,
        "category",
        Phrase.of(kind + limit.category().word()),
        "configuration",
        of(limit.configuration()));
  }

  /** One phrase after the other, as a list; empty without any. */
  static Optional<Phrase> list(List<Phrase> phrases) {
    return phrases.stream()
        .reduce((first, rest) -> Phrase.of("pairs.list", "first", first, "rest", rest));
  }

  /** The word of the record as the last part of a topic or key. */
  static String slug(Word word) {
    return word.word().replace('_', '-');
  }
}
