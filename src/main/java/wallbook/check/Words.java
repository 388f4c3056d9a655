package wallbook.check;

import wallbook.record.Word;
import wallbook.wording.Phrase;

/** Names of the record's words for readers, under {@code <kind>.<word>}. */
final class Words {
  private Words() {}

  static Phrase of(String kind, Word word) {
    return Phrase.of(kind + "." + word.word());
  }
}
