package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.compose.Describe;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.ElevationMark;
import wallbook.compose.drawing.Opening;
import wallbook.compose.drawing.WallElevation;
import wallbook.geometry.RoomOutline;
import wallbook.geometry.Wall;
import wallbook.quantity.Length;
import wallbook.record.Place;
import wallbook.record.Space;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** The walls of a room, each seen from inside, with the places on it. */
final class WallDrawings {
  private static final double QUIET_MM = 90;
  private static final double FULL_MM = 120;

  private final PlanDrawings plans;
  private final Wording wording;
  private final Describe describe;

  WallDrawings(PlanDrawings plans, Wording wording, Describe describe) {
    this.plans = plans;
    this.wording = wording;
    this.describe = describe;
  }

  /** The walls that hold a place at a known offset and height, each seen from inside. */
  List<Drawing> of(Space space, List<Place> places) {
    List<Drawing> drawings = new ArrayList<>();
    if (space.outline().size() < 3 || space.ceilingHeight().isEmpty()) {
      return drawings;
    }
    for (Wall wall : new RoomOutline(space.outline()).walls()) {
      List<Place> here =
          places.stream()
              .filter(
                  p ->
                      p.wall().equals(Optional.of(wall.letter()))
                          && p.offset().isPresent()
                          && p.height().isPresent())
              .toList();
      if (!here.isEmpty()) {
        drawings.add(elevation(space, wall, here));
      }
    }
    return drawings;
  }

  private WallElevation elevation(Space space, Wall wall, List<Place> places) {
    double width = wall.length().inMetres();
    double height = space.ceilingHeight().orElseThrow().inMetres();
    List<ElevationMark> marks =
        places.stream()
            .map(
                p ->
                    new ElevationMark(
                        Symbols.of(p),
                        p.offset().orElseThrow().inMetres(),
                        p.height().orElseThrow().inMetres(),
                        wording.quantities().position(p.offset().orElseThrow()),
                        wording.quantities().position(p.height().orElseThrow()),
                        plans.labels(p),
                        Optional.of(PlanParts.target(p))))
            .toList();
    List<Opening> openings =
        space.openings().stream()
            .filter(o -> o.wall().equals(wall.letter()) && o.head().isPresent())
            .map(
                o ->
                    new Opening(
                        o.offset().inMetres(),
                        o.width().inMetres(),
                        o.sill().map(Length::inMetres).orElse(0.0),
                        o.head().orElseThrow().inMetres()))
            .toList();
    String name = describe.wall(space, wall.letter());
    String title = say("drawing.wall.title", "room", space.name(), "wall", name);
    String alt =
        say(
            "drawing.wall.alt",
            "room",
            space.name(),
            "wall",
            name,
            "places",
            places.stream()
                .map(p -> p.name() + ": " + describe.where(p))
                .collect(Collectors.joining("; ")));
    return new WallElevation(
        plans.frame(title, alt, marks.size(), QUIET_MM, FULL_MM),
        WallElevation.levelCeiling(width, height),
        wording.quantities().position(wall.length()),
        wording.quantities().position(space.ceilingHeight().orElseThrow()),
        openings,
        marks,
        plans.unit());
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
