package wallbook.render.press;

import java.util.List;

/**
 * Which elements a rule is for: steps from the element outwards.
 *
 * @param steps the last step of the written selector comes first
 * @param specificity how exact it is, higher being stronger (CSS 2.1, 6.4.3)
 * @param pseudo where the rule's content goes
 */
record Selector(List<Step> steps, int specificity, Pseudo pseudo) {
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

  record Step(Relation relation, List<Test> tests) {
    Step {
      tests = List.copyOf(tests);
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

  Selector {
    steps = List.copyOf(steps);
  }

  boolean fits(Branch branch) {
    return steps.get(0).fits(branch) && fits(branch, 1);
  }

  private boolean fits(Branch from, int next) {
    if (next == steps.size()) {
      return true;
    }
    Step step = steps.get(next);
    boolean far = step.relation() == Relation.ANCESTOR || step.relation() == Relation.ANY_PREVIOUS;
    boolean up = step.relation() == Relation.ANCESTOR || step.relation() == Relation.PARENT;
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
