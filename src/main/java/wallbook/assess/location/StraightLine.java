package wallbook.assess.location;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.geometry.BuildingPoint;
import wallbook.quantity.Length;
import wallbook.wording.Phrase;

/**
 * The straight line between two positions: the least that anything laid between them can measure.
 *
 * @param distance in space where both heights are known, else on the plan, which is no more
 * @param missing what the record would have to say for the distance to be known
 */
public record StraightLine(Optional<Length> distance, boolean heightsKnown, List<Phrase> missing) {
  public StraightLine {
    missing = List.copyOf(missing);
  }

  public static StraightLine between(Position a, Position b) {
    Optional<Length> inSpace = a.point().flatMap(from -> b.point().map(from::distanceTo));
    if (inSpace.isPresent()) {
      return new StraightLine(inSpace, true, List.of());
    }
    Optional<Length> onPlan =
        a.plan().flatMap(from -> b.plan().map(to -> BuildingPoint.horizontal(from, to)));
    if (onPlan.isPresent()) {
      return new StraightLine(onPlan, false, List.of());
    }
    List<Phrase> missing = new ArrayList<>(a.missing());
    missing.addAll(b.missing());
    return new StraightLine(Optional.empty(), false, missing.stream().distinct().toList());
  }
}
