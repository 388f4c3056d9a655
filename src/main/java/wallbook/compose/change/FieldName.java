package wallbook.compose.change;

import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Names a field of the record in the reader's words. */
final class FieldName {
  private final Wording wording;

  FieldName(Wording wording) {
    this.wording = wording;
  }

  /**
   * The name, its first letter a capital.
   *
   * @param dotted key of the field; within another field both keys with a dot between, and where a
   *     field comes several times its number from 1 between them, as in {@code ties.2.distance}
   */
  String of(String dotted) {
    String name = "";
    String last = "";
    for (String step : dotted.split("\\.")) {
      if (step.chars().allMatch(Character::isDigit)) {
        last = wording.say(Phrase.of("change.field.numbered", "field", last, "number", step));
      } else {
        name = joined(name, last);
        boolean tied = dotted.startsWith("ties.") && step.equals("from");
        last = wording.say("change.key." + (tied ? "corner" : step));
      }
    }
    String whole = joined(name, last);
    return whole.substring(0, 1).toUpperCase(wording.locale()) + whole.substring(1);
  }

  private String joined(String outer, String inner) {
    return outer.isEmpty()
        ? inner
        : wording.say(Phrase.of("change.field.within", "outer", outer, "inner", inner));
  }
}
