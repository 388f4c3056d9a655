package wallbook.assess.location;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.geometry.RoomOutline;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Point;
import wallbook.record.Space;

/**
 * Which of two mirror points a tied place can be: within its own outdoor area where that has an
 * outline, and not inside the house.
 */
final class Surroundings {
  private final Optional<RoomOutline> own;
  private final List<RoomOutline> rooms;
  private final Length tolerance;

  private Surroundings(Optional<RoomOutline> own, List<RoomOutline> rooms, Length tolerance) {
    this.own = own;
    this.rooms = rooms;
    this.tolerance = tolerance;
  }

  /**
   * @param space the place's own
   * @param tolerance by which a point may miss its area, or reach into a wall
   */
  static Surroundings of(Space space, Job job, Length tolerance) {
    return new Surroundings(
        outline(space), space.kind().isOutdoor() ? rooms(space, job) : List.of(), tolerance);
  }

  static Optional<RoomOutline> outline(Space space) {
    return space.outline().size() < 3
        ? Optional.empty()
        : Optional.of(new RoomOutline(space.outline()));
  }

  /** The rooms of the floor that lies nearest to the level of the outdoor area. */
  private static List<RoomOutline> rooms(Space outdoor, Job job) {
    Length level = job.floor(outdoor.floor()).elevation();
    List<Space> indoors = job.spaces().stream().filter(space -> !space.kind().isOutdoor()).toList();
    Optional<String> nearest =
        indoors.stream()
            .map(Space::floor)
            .min(Comparator.comparing(floor -> difference(level, job.floor(floor).elevation())));
    return indoors.stream()
        .filter(space -> nearest.filter(space.floor()::equals).isPresent())
        .flatMap(space -> outline(space).stream())
        .toList();
  }

  private static double difference(Length a, Length b) {
    return Math.abs(a.minus(b).inMetres());
  }

  boolean allow(Point point) {
    boolean inOwn = own.isEmpty() || own.get().contains(point, tolerance);
    return inOwn && rooms.stream().noneMatch(room -> isInside(room, point));
  }

  /** Whether a point lies in a room, and further in than the tolerance. */
  private boolean isInside(RoomOutline room, Point point) {
    return room.contains(point) && room.distanceToWalls(point).compareTo(tolerance) > 0;
  }
}
