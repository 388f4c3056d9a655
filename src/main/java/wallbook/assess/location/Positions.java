package wallbook.assess.location;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.geometry.Whereabouts;
import wallbook.quantity.Length;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.record.RunEnd;
import wallbook.record.Space;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Turns what a record says of a place or head into coordinates of the building: wall, offset from
 * the left-hand corner and height; or a point on the plan; or ties. Heights count from the finished
 * floor of the entrance level.
 */
public final class Positions {
  private final Job job;
  private final TieSolver ties;

  public Positions(Job job, Tables tables) {
    this.job = job;
    this.ties = new TieSolver(tables);
  }

  /** Where the end of a run is: its place, or its head. */
  public Position of(RunEnd end) {
    return end.place()
        .map(id -> of(job.place(id)))
        .orElseGet(() -> of(job.head(end.head().orElseThrow())));
  }

  public Position of(Head head) {
    Space space = job.space(head.space());
    return position(
        Whereabouts.onWall(space, head.wall(), head.offset()).or(head::at),
        Whereabouts.height(job, head),
        missingPlan(space, head.wall(), head.offset()));
  }

  public Position of(Place place) {
    Space space = job.space(place.space());
    Optional<Point> plan =
        byTies(place)
            .or(() -> Whereabouts.onWall(space, place.wall(), place.offset()))
            .or(place::at);
    return position(
        plan,
        Whereabouts.height(job, place),
        place.ties().isEmpty()
            ? missingPlan(space, place.wall(), place.offset())
            : missingOfTies(place));
  }

  private Optional<Point> byTies(Place place) {
    return !place.ties().isEmpty() && ties.solve(place, job) instanceof TiedPoint.Found found
        ? Optional.of(found.point())
        : Optional.empty();
  }

  private List<Phrase> missingOfTies(Place place) {
    return ties.solve(place, job) instanceof TiedPoint.Unknown unknown
        ? unknown.missing()
        : List.of(Phrase.of("location.missing.sound-ties"));
  }

  private static List<Phrase> missingPlan(
      Space space, Optional<String> wall, Optional<Length> offset) {
    List<Phrase> missing = new ArrayList<>();
    if (wall.isEmpty() || offset.isEmpty()) {
      missing.add(Phrase.of("location.missing.place"));
    } else if (Whereabouts.outline(space).isEmpty()) {
      missing.add(Phrase.of("location.missing.outline", "space", space.name()));
    } else {
      missing.add(Phrase.of("location.missing.wall", "space", space.name()));
    }
    return missing;
  }

  private static Position position(
      Optional<Point> plan, Optional<Length> height, List<Phrase> missingPlan) {
    List<Phrase> missing = new ArrayList<>(plan.isPresent() ? List.of() : missingPlan);
    if (height.isEmpty()) {
      missing.add(Phrase.of("location.missing.height"));
    }
    return new Position(plan, height, missing);
  }
}
