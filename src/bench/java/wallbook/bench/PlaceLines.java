package wallbook.bench;

import static wallbook.bench.Room.metres;

/** Places as the record writes them. */
final class PlaceLines {
  private PlaceLines() {}

  static String place(WiredPlace place) {
    PlacePlan plan = place.plan();
    Room room = place.room();
    String label = plan.isPlate() ? " label: %s-%s,".formatted(room.number(), place.letter()) : "";
    Spot spot = room.spot(plan);
    String where =
        plan.wall().isEmpty()
            ? "at: [%s, %s]".formatted(metres(spot.x()), metres(spot.y()))
            : "wall: %s, offset: %s".formatted(room.wall(plan), metres(plan.offsetMetres()));
    return "  - {id: %s,%s name: \"%s\", space: s-%s, kind: %s, use: %s, %s, height: %s}"
        .formatted(
            place.id(),
            label,
            plan.name(),
            room.number(),
            plan.kind(),
            plan.use(),
            where,
            metres(plan.heightMetres()));
  }

  static String stubOut(int index, Spot spot) {
    return ("  - {id: p-garden-%d, name: Stub-out %d, space: garden, kind: stub_out,"
            + " use: landscape_audio, height: 0.15 m, ties: [{from: corner-sw, distance: %s},"
            + " {from: corner-se, distance: %s}]}")
        .formatted(
            index + 1,
            index + 1,
            metres(spot.planDistance(0, 0)),
            metres(spot.planDistance(Room.width(), 0)));
  }
}
