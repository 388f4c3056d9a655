package wallbook.compose;

import wallbook.record.ExceptionItem;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What is said in several documents of something that is not as promised. */
public final class ExceptionText {
  private final Wording wording;

  public ExceptionText(Wording wording) {
    this.wording = wording;
  }

  /** What stands in for it, or that nothing does. */
  public String standsIn(ExceptionItem exception) {
    return exception.standsIn().orElseGet(() -> wording.say("manual.nothing-stands-in"));
  }

  /** Whether it is still open, agreed on a day, or settled without one. */
  public String state(ExceptionItem exception) {
    if (exception.open().orElse(false)) {
      return wording.say("manual.exception-open");
    }
    return exception
        .agreed()
        .map(day -> wording.say(Phrase.of("manual.exception-agreed", "date", day)))
        .orElseGet(() -> wording.say("manual.exception-settled"));
  }
}
