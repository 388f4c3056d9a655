package wallbook.render.press;

import java.util.List;
import java.util.Locale;

/**
 * Which elements a rule is for: steps from the element outwards.
 *
 * @param steps the last step of the written selector comes first
 * @param specificity how exact it is, higher being stronger (CSS 2.1, 6.4.3)
 * @param pseudo where the rule's content goes
 * @param around {@linkplain #bit bits} of names that must be among those of the elements around
 */
record Selector(List<Step> steps, int specificity, Pseudo pseudo, long around) {
  /** The element itself, or what is written at its begin or end. */
  enum Pseudo {
    NONE,
    BEFORE,
    AFTER
  }

  /** How a step stands to the one before it in the list. */
  enum Relation {
    SELF,
    ANCESTOR,
    PARENT,
    PREVIOUS,
    ANY_PREVIOUS
  }

  /**
   * A step.
   *
   * @param names bits of the tag and classes that are asked for
   */
  record Step(Relation relation, List<Test> tests, long names) {
    Step {
      tests = List.copyOf(tests);
    }

    boolean goesUp() {
      return relation == Relation.ANCESTOR || relation == Relation.PARENT;
    }

    boolean fits(Branch branch) {
      for (Test test : tests) {
        if (!test.fits(branch)) {
          return false;
        }
      }
      return true;
    }
  }

  /** Something that has to be so of an element. */
  interface Test {
    boolean fits(Branch branch);
  }

  Selector(List<Step> steps, int specificity, Pseudo pseudo) {
    this(List.copyOf(steps), specificity, pseudo, around(steps));
  }

  /** What is above the elements before an element is above the element itself. */
  private static long around(List<Step> steps) {
    long names = 0;
    for (Step step : steps) {
      names |= step.goesUp() ? step.names() : 0;
    }
    return names;
  }

  /** The bit that stands for the name of a tag or class; some names share one. */
  static long bit(String name) {
    return 1L << name.toLowerCase(Locale.ROOT).hashCode();
  }

  boolean fits(Branch branch) {
    return (around & ~branch.around()) == 0 && steps.get(0).fits(branch) && fits(branch, 1);
  }

  private boolean fits(Branch from, int next) {
    if (next == steps.size()) {
      return true;
    }
    Step step = steps.get(next);
    boolean far = step.relation() == Relation.ANCESTOR || step.relation() == Relation.ANY_PREVIOUS;
    boolean up = step.goesUp();
    Branch branch = up ? from.parent() : from.previous();
    while (branch != null) {
      if (step.fits(branch) && fits(branch, next + 1)) {
        return true;
      }
      branch = far ? (up ? branch.parent() : branch.previous()) : null;
    }
    return false;
  }
}
