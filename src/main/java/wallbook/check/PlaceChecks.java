package wallbook.check;

import java.util.List;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.geometry.RoomOutline;
import wallbook.geometry.Wall;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Origin;
import wallbook.record.Photo;
import wallbook.record.Point;
import wallbook.record.Space;
import wallbook.wording.Phrase;

/** Whether places and heads can be where they are said to be. */
final class PlaceChecks implements Check {
  private static final Length FLOOR = Length.metres(0);

  private final Length tolerance;

  PlaceChecks(CheckFigures figures) {
    this.tolerance = figures.length("place-tolerance");
  }

  @Override
  public void look(Job job, Findings findings) {
    Spot.of(job).forEach(spot -> check(spot, findings));
    for (Photo photo : job.photos()) {
      photo
          .space()
          .or(() -> photo.place().map(id -> job.place(id).space()))
          .ifPresent(id -> checkWall(photo.origin(), photo.wall(), job.space(id), findings));
    }
  }

  private void check(Spot spot, Findings findings) {
    checkWall(spot.origin(), spot.wall(), spot.space(), findings);
    wall(spot)
        .ifPresent(
            wall -> spot.offset().ifPresent(offset -> checkOffset(spot, wall, offset, findings)));
    spot.at().ifPresent(at -> checkInside(spot, at, findings));
    spot.height().ifPresent(height -> checkHeight(spot, height, findings));
  }

  /** The wall that a spot is at, if its space's outline has it. */
  private static Optional<Wall> wall(Spot spot) {
    return OutlineChecks.sound(spot.space()).flatMap(o -> spot.wall().flatMap(o::wall));
  }

  static void checkWall(Origin origin, Optional<String> wall, Space space, Findings findings) {
    Optional<RoomOutline> outline = OutlineChecks.sound(space);
    if (wall.isEmpty() || outline.isEmpty() || outline.get().wall(wall.get()).isPresent()) {
      return;
    }
    List<String> letters = outline.get().walls().stream().map(Wall::letter).toList();
    findings.add(
        Finding.of(
                Severity.ERROR,
                "unknown-wall",
                origin.position("wall"),
                "wall",
                wall.get(),
                "space",
                space.name())
            .found(wall.get())
            .expecting(Phrase.of("expected.one-of", "choices", String.join(", ", letters)))
            .nearest(Nearest.to(wall.get(), letters)));
  }

  private void checkOffset(Spot spot, Wall wall, Length offset, Findings findings) {
    if (offset.compareTo(wall.length().plus(tolerance)) > 0) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "place-beyond-wall",
                  spot.origin().position("offset"),
                  "place",
                  spot.name(),
                  "offset",
                  offset,
                  "wall",
                  wall.letter(),
                  "length",
                  wall.length())
              .expecting(Phrase.of("expected.at-most", "limit", wall.length())));
    }
  }

  private void checkInside(Spot spot, Point at, Findings findings) {
    OutlineChecks.sound(spot.space())
        .filter(outline -> !outline.contains(at, tolerance))
        .ifPresent(
            outline ->
                findings.add(
                    Finding.of(
                        Severity.ERROR,
                        "place-outside-room",
                        spot.origin().position("at"),
                        "place",
                        spot.name(),
                        "space",
                        spot.space().name())));
  }

  private static void checkHeight(Spot spot, Length height, Findings findings) {
    if (spot.space().kind().isOutdoor()) {
      return;
    }
    if (height.compareTo(FLOOR) < 0) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "height-below-floor",
              spot.origin().position("height"),
              "place",
              spot.name()));
    }
    spot.space()
        .ceilingHeight()
        .filter(ceiling -> height.compareTo(ceiling) > 0)
        .ifPresent(
            ceiling ->
                findings.add(
                    Finding.of(
                            Severity.ERROR,
                            "height-above-ceiling",
                            spot.origin().position("height"),
                            "place",
                            spot.name(),
                            "height",
                            height,
                            "ceiling",
                            ceiling)
                        .expecting(Phrase.of("expected.at-most", "limit", ceiling))));
  }
}
