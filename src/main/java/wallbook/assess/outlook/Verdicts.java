package wallbook.assess.outlook;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;

/** Order of verdicts by how much may be claimed on them, the most first. */
final class Verdicts {
  private static final List<Verdict> ORDER =
      List.of(
          Verdict.WITHIN,
          Verdict.CONDITIONAL,
          Verdict.INFORMATION,
          Verdict.NOT_STATED,
          Verdict.BEYOND);

  /** The most first. */
  static final Comparator<Verdict> FIRMEST_FIRST = Comparator.comparingInt(ORDER::indexOf);

  private Verdicts() {}

  /** The assessment on which least may be claimed; of equals the first. */
  static Assessment weakest(Collection<Assessment> assessments) {
    Assessment weakest = null;
    for (Assessment assessment : assessments) {
      if (weakest == null || FIRMEST_FIRST.compare(assessment.verdict(), weakest.verdict()) > 0) {
        weakest = assessment;
      }
    }
    if (weakest == null) {
      throw new IllegalArgumentException("nothing to claim on");
    }
    return weakest;
  }

  /** The one of two on which less may be claimed. */
  static Verdict weaker(Verdict a, Verdict b) {
    return FIRMEST_FIRST.compare(a, b) >= 0 ? a : b;
  }
}
