package wallbook.bench;

import java.util.List;

/**
 * One place of an invented room.
 *
 * @param name name as printed
 * @param kind word of the record for how it is built
 * @param use word of the record for what it is meant for
 * @param wall letter of the wall, OUTER for the one with the window, or nothing for the ceiling
 * @param offsetMetres distance from the left corner of the wall, or from the west wall
 * @param heightMetres height above the floor
 * @param runs cables that end there
 */
record PlacePlan(
    String name,
    String kind,
    String use,
    String wall,
    double offsetMetres,
    double heightMetres,
    List<RunSort> runs) {
  static final String OUTER = "outer";
  private static final double CEILING_METRES = 2.7;

  static PlacePlan plate(
      String name, String use, String wall, double offset, double height, RunSort... runs) {
    return new PlacePlan(name, "wall_plate", use, wall, offset, height, List.of(runs));
  }

  static PlacePlan device(
      String name, String use, String wall, double offset, double height, RunSort... runs) {
    return new PlacePlan(name, "device", use, wall, offset, height, List.of(runs));
  }

  static PlacePlan ceiling(String name, String use, double offset, RunSort... runs) {
    return new PlacePlan(name, "ceiling_point", use, "", offset, CEILING_METRES, List.of(runs));
  }

  static PlacePlan shade() {
    return new PlacePlan(
        "Shade of the window", "in_wall_coil", "shade", OUTER, 2.5, 2.4, List.of(RunSort.SHADE));
  }

  boolean isPlate() {
    return kind.equals("wall_plate");
  }
}
