package wallbook.assess.conduit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Diameter;
import wallbook.quantity.Force;

/**
 * A pull through all sections of a conduit, computed from both ends. Each section begins without
 * tension, because the cable is drawn out at every pull point; the worst section counts.
 *
 * @param fromFirst greatest tension when fed at the from-end
 * @param fromLast greatest tension when fed at the to-end
 */
record BothEnds(Force fromFirst, Force fromLast) {

  static BothEnds of(List<PullSection> sections, Optional<Diameter> bore, PullingTension pull) {
    return new BothEnds(worst(sections, bore, pull, false), worst(sections, bore, pull, true));
  }

  private static Force worst(
      List<PullSection> sections, Optional<Diameter> bore, PullingTension pull, boolean back) {
    return sections.stream()
        .map(section -> section.pullPieces(bore))
        .map(pieces -> pull.greatest(back ? PullingTension.reversed(pieces) : pieces))
        .max(Comparator.naturalOrder())
        .orElse(Force.newtons(0));
  }

  /** Whether feeding at the to-end takes less; where both take the same, the from-end is named. */
  boolean backIsBetter() {
    return fromLast.compareTo(fromFirst) < 0;
  }

  Force better() {
    return backIsBetter() ? fromLast : fromFirst;
  }

  Force worse() {
    return backIsBetter() ? fromFirst : fromLast;
  }
}
