package wallbook.geometry;

import java.util.Optional;
import wallbook.quantity.Length;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.record.RunEnd;
import wallbook.record.Space;

/**
 * Where places and heads are by wall and offset or by their point on the plan. Ties, which need an
 * adjustment, are no matter of this class. Heights count from the finished floor of the entrance
 * level.
 */
public final class Whereabouts {
  private static final int LEAST_CORNERS = 3;

  private Whereabouts() {}

  /**
   * The outline of a space, unless it has too few corners or runs the wrong way round, which would
   * exchange the corners of its walls.
   */
  public static Optional<RoomOutline> outline(Space space) {
    return Optional.of(space.outline())
        .filter(corners -> corners.size() >= LEAST_CORNERS)
        .map(RoomOutline::new)
        .filter(RoomOutline::isClockwise);
  }

  /** A point at an offset from the left-hand corner of a wall, if the space has that wall. */
  public static Optional<Point> onWall(
      Space space, Optional<String> letter, Optional<Length> offset) {
    Optional<Wall> wall = outline(space).flatMap(outline -> letter.flatMap(outline::wall));
    return wall.filter(w -> w.length().inMetres() > 0).flatMap(w -> offset.map(w::at));
  }

  /** Where the end of a run is on the plan, by wall and offset or by its point. */
  public static Optional<Point> onPlan(Job job, RunEnd end) {
    if (end.place().isPresent()) {
      Place place = job.place(end.place().get());
      return onWall(job.space(place.space()), place.wall(), place.offset()).or(place::at);
    }
    Head head = job.head(end.head().orElseThrow());
    return onWall(job.space(head.space()), head.wall(), head.offset()).or(head::at);
  }

  /** Where the end of a run is in the building, if plan and height are known. */
  public static Optional<BuildingPoint> inBuilding(Job job, RunEnd end) {
    Optional<Length> height =
        end.place().isPresent()
            ? height(job, job.place(end.place().get()))
            : height(job, job.head(end.head().orElseThrow()));
    return onPlan(job, end).flatMap(plan -> height.map(above -> new BuildingPoint(plan, above)));
  }

  /** Height of a place; of a ceiling point the ceiling's, unless the record differs. */
  public static Optional<Length> height(Job job, Place place) {
    Space space = job.space(place.space());
    return place
        .height()
        .or(() -> builtInHeight(place, space))
        .map(job.floor(space.floor()).elevation()::plus);
  }

  /** Height of a head. */
  public static Optional<Length> height(Job job, Head head) {
    return head.height().map(job.floor(job.space(head.space()).floor()).elevation()::plus);
  }

  private static Optional<Length> builtInHeight(Place place, Space space) {
    return switch (place.kind()) {
      case CEILING_POINT -> space.ceilingHeight();
      case FLOOR_BOX -> Optional.of(Length.metres(0));
      default -> Optional.empty();
    };
  }
}
