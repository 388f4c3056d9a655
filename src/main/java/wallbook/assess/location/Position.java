package wallbook.assess.location;

import java.util.List;
import java.util.Optional;
import wallbook.geometry.BuildingPoint;
import wallbook.quantity.Length;
import wallbook.record.Point;
import wallbook.wording.Phrase;

/**
 * Where a place or head is, as far as the record says.
 *
 * @param plan on the plan that all floors share
 * @param height above the finished floor of the entrance level
 * @param missing what the record would have to say for both to be known
 */
public record Position(Optional<Point> plan, Optional<Length> height, List<Phrase> missing) {
  public Position {
    missing = List.copyOf(missing);
  }

  /** The point in the building, if plan and height are known. */
  public Optional<BuildingPoint> point() {
    return plan.flatMap(at -> height.map(above -> new BuildingPoint(at, above)));
  }
}
