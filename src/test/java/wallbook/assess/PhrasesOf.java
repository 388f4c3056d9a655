package wallbook.assess;

import java.util.List;
import java.util.Optional;
import wallbook.wording.Phrase;

/** Looks into the phrases of an assessment, for tests. */
public final class PhrasesOf {
  private PhrasesOf() {}

  /** Every phrase of an assessment, nested ones too. */
  public static List<Phrase> all(Assessment assessment) {
    return Said.phrases(assessment);
  }

  public static List<String> keys(Assessment assessment) {
    return all(assessment).stream().map(Phrase::key).toList();
  }

  /** An argument of the phrase with the given key. */
  public static Optional<Object> argument(Assessment assessment, String key, String name) {
    return all(assessment).stream()
        .filter(phrase -> phrase.key().equals(key))
        .map(phrase -> phrase.arguments().get(name))
        .findFirst();
  }

  /** The first clause of joined ones. */
  public static Phrase first(Phrase phrase) {
    return phrase.key().equals("assess.and")
        ? first((Phrase) phrase.arguments().get("first"))
        : phrase;
  }
}
