package wallbook.assess.outlook;

import java.util.Collection;
import java.util.Comparator;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;

/** Order of verdicts by how much may be claimed on them, the most first. */
final class Verdicts {
  /** The most first. */
  static final Comparator<Verdict> FIRMEST_FIRST = Comparator.comparingInt(Verdicts::turn);

  private Verdicts() {}

  private static int turn(Verdict verdict) {
    return switch (verdict) {
      case WITHIN -> 0;
      case CONDITIONAL -> 1;
      case INFORMATION -> 2;
      case NOT_STATED -> 3;
      case BEYOND -> 4;
    };
  }

  /** The assessment on which least may be claimed; of equals the first. */
  static Assessment weakest(Collection<Assessment> assessments) {
    Assessment weakest = null;
    for (Assessment assessment : assessments) {
      if (weakest == null || turn(assessment.verdict()) > turn(weakest.verdict())) {
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
    return turn(a) >= turn(b) ? a : b;
  }
}
