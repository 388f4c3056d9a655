package wallbook.compose.guide;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Effort;
import wallbook.assess.outlook.Way;
import wallbook.wording.Phrase;

/**
 * Finds what an answer of "yes, if" hangs on: of a conduit, what limits it, which is its state; of
 * a cable, those of its assumptions that no sure assessment of the house makes. That ends must
 * first be finished stands for all others; where there is none, what limits it is the condition.
 */
final class Conditions {
  private final Set<String> harmless = new HashSet<>();

  Conditions(Assessments assessments) {
    assessments.all().stream()
        .filter(a -> a.verdict() == Verdict.WITHIN)
        .flatMap(a -> a.assumptions().stream())
        .map(Phrase::key)
        .forEach(harmless::add);
  }

  /** Conditions of a way's bases; where finishing ends is the work, that it is done goes unsaid. */
  List<Phrase> of(Way way) {
    boolean finished = way.effort().compareTo(Effort.FINISH_ENDS) >= 0;
    return way.bases().stream()
        .filter(a -> a.verdict() == Verdict.CONDITIONAL)
        .flatMap(this::of)
        .filter(condition -> !finished || !isTermination(condition))
        .distinct()
        .toList();
  }

  private Stream<Phrase> of(Assessment assessment) {
    if (assessment.topic().startsWith("conduit.")) {
      return assessment.limitedBy().stream();
    }
    List<Phrase> special =
        assessment.assumptions().stream().filter(a -> !harmless.contains(a.key())).toList();
    if (special.stream().anyMatch(Conditions::isTermination)) {
      return special.stream().filter(Conditions::isTermination);
    }
    return special.isEmpty() ? assessment.limitedBy().stream() : special.stream();
  }

  private static boolean isTermination(Phrase condition) {
    return condition.key().endsWith(".once-terminated");
  }
}
