package wallbook.compose.guide;

import java.util.List;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.outlook.Effort;
import wallbook.assess.outlook.Way;
import wallbook.wording.Phrase;

/** Finds what an answer of "yes, if" hangs on. */
final class Conditions {
  private Conditions() {}

  /** Conditions of a way's bases; where finishing ends is the work, that it is done goes unsaid. */
  static List<Phrase> of(Way way) {
    boolean finished = way.effort().compareTo(Effort.FINISH_ENDS) >= 0;
    Stream<Phrase> conditions =
        way.bases().stream().map(Assessment::conditions).flatMap(List::stream);
    return conditions
        .filter(condition -> !finished || !isTermination(condition))
        .distinct()
        .toList();
  }

  private static boolean isTermination(Phrase condition) {
    return condition.key().endsWith(".once-terminated");
  }
}
