package wallbook.bench;

import static wallbook.bench.Room.metres;

import java.util.List;

/** Conduits as the record writes them. */
final class ConduitLines {
  private static final double BEND_RADIUS_METRES = 0.2;
  private static final double BEND_METRES = BEND_RADIUS_METRES * Math.PI / 2;
  private static final double UP_METRES = 1.3;

  private ConduitLines() {}

  static String toTelevision(WiredPlace place, List<String> contents) {
    Spot rack = Room.rack(place.room().storey());
    Spot end = place.room().spot(place.plan());
    double east = Math.max(0.5, Math.abs(rack.x() - end.x()));
    double north = Math.max(0.5, Math.abs(rack.y() - end.y()));
    double down = 1;
    String number = place.room().number();
    return """
      - id: c-%s
        label: C-%s
        name: Conduit to the television of %s
        type: ent
        trade_size: "1-1/4"
        from: {head: rack-%d}
        to: {place: %s}
        length: %s
        path:
          - {straight: %s, rise: 90 deg}
          - {bend: 90 deg, radius: %s}
          - {straight: %s, rise: 0 deg}
          - {bend: 90 deg, radius: %s}
          - {straight: %s, rise: 0 deg}
          - {bend: 90 deg, radius: %s}
          - {straight: %s, rise: -90 deg}
        contents: [%s]
        pull_string: both_ends
        proved: {date: 2025-11-17, by: string_drawn}
        condition: clear
    """
        .formatted(
            number,
            number,
            number,
            place.room().storey(),
            place.id(),
            metres(UP_METRES + east + north + down + 3 * BEND_METRES),
            metres(UP_METRES),
            metres(BEND_RADIUS_METRES),
            metres(east),
            metres(BEND_RADIUS_METRES),
            metres(north),
            metres(BEND_RADIUS_METRES),
            metres(down),
            String.join(", ", contents));
  }

  static String toStubOut(WiredRun run, int index, Spot spot) {
    double along = spot.planDistance(Room.rack(1).x(), 0);
    return """
      - id: %s
        label: CG-%02d
        name: Sleeve to stub-out %d
        type: pvc_40
        trade_size: "1"
        from: {space: closet-1, note: "above the floor at wall D"}
        to: {place: %s}
        length: %s
        path:
          - {straight: 0.50 m, rise: -90 deg}
          - {bend: 90 deg, radius: %s}
          - {straight: %s, rise: 0 deg}
          - {bend: 90 deg, radius: %s}
          - {straight: 0.60 m, rise: 90 deg}
        contents: [%s]
        pull_string: both_ends
        proved: {date: 2025-11-24, by: string_drawn}
        condition: clear
    """
        .formatted(
            run.conduit(),
            index + 1,
            index + 1,
            run.place(),
            metres(along + 1.1 + 2 * BEND_METRES),
            metres(BEND_RADIUS_METRES),
            metres(along),
            metres(BEND_RADIUS_METRES),
            run.id());
  }
}
