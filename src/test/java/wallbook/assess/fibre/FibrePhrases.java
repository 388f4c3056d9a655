package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.wording.Phrase;

/** Looks into the phrases of an assessment, for tests. */
final class FibrePhrases {
  private FibrePhrases() {}

  /** Every phrase of an assessment, nested ones too. */
  static List<Phrase> all(Assessment assessment) {
    List<Phrase> phrases = new ArrayList<>();
    collect(assessment.asked(), phrases);
    assessment.limitedBy().ifPresent(phrase -> collect(phrase, phrases));
    assessment.assumptions().forEach(phrase -> collect(phrase, phrases));
    assessment.missing().forEach(phrase -> collect(phrase, phrases));
    return phrases;
  }

  static List<String> keys(Assessment assessment) {
    return all(assessment).stream().map(Phrase::key).toList();
  }

  /** An argument of the phrase with the given key. */
  static Optional<Object> argument(Assessment assessment, String key, String name) {
    return all(assessment).stream()
        .filter(phrase -> phrase.key().equals(key))
        .map(phrase -> phrase.arguments().get(name))
        .findFirst();
  }

  /** The first clause of joined ones. */
  static Phrase first(Phrase phrase) {
    return phrase.key().equals("fibre.and")
        ? first((Phrase) phrase.arguments().get("first"))
        : phrase;
  }

  private static void collect(Phrase phrase, List<Phrase> into) {
    into.add(phrase);
    for (Object argument : phrase.arguments().values()) {
      if (argument instanceof Phrase nested) {
        collect(nested, into);
      }
    }
  }
}
