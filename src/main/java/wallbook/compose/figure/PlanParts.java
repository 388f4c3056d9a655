package wallbook.compose.figure;

import java.util.Optional;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.Target;
import wallbook.record.Head;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.record.Space;

/** Points and outlines of the record in metres, and where a touch of a thing leads. */
public final class PlanParts {
  private PlanParts() {}

  /** The outline of a space, its first corner first. */
  public static Outline outline(Space space) {
    return Outline.ofCornersInAnyDirection(space.outline().stream().map(PlanParts::point).toList());
  }

  /** A point of the plan in metres. */
  public static PointM point(Point point) {
    return new PointM(point.x().inMetres(), point.y().inMetres());
  }

  static NamedOutline named(Space space) {
    return new NamedOutline(
        space.name(), outline(space), Optional.of(new Target("room/" + space.id(), space.name())));
  }

  static Target target(Place place) {
    return new Target("place/" + place.id(), place.name());
  }

  static Target target(Head head) {
    return new Target("head/" + head.id(), head.name());
  }
}
