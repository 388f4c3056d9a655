package wallbook.bench;

/**
 * One room of an invented storey: six along the south, six along the north, a hall between.
 *
 * @param storey storey from 1
 * @param cell room of the storey from 0; the fifth is the equipment closet
 */
record Room(int storey, int cell) {
  static final int CELLS = 12;
  static final int CLOSET = 4;
  static final double STOREY_METRES = 3;
  private static final int IN_ROW = 6;
  private static final double WIDTH_METRES = 5;
  private static final double DEPTH_METRES = 6;
  private static final double HALL_METRES = 2;
  private static final double RACK_HEIGHT_METRES = 1.2;

  /** Number of the room on its door, such as 305. */
  String number() {
    return "%d%02d".formatted(storey, cell + 1);
  }

  boolean isSouth() {
    return cell < IN_ROW;
  }

  double west() {
    return cell % IN_ROW * WIDTH_METRES;
  }

  double east() {
    return west() + WIDTH_METRES;
  }

  double south() {
    return isSouth() ? 0 : DEPTH_METRES + HALL_METRES;
  }

  double north() {
    return south() + DEPTH_METRES;
  }

  double floor() {
    return (storey - 1) * STOREY_METRES;
  }

  /** Letter of the wall with the window. */
  String outerWall() {
    return isSouth() ? "D" : "B";
  }

  /** Letter of the wall with the door. */
  String hallWall() {
    return isSouth() ? "B" : "D";
  }

  String wall(PlacePlan plan) {
    return plan.wall().equals(PlacePlan.OUTER) ? outerWall() : plan.wall();
  }

  /** Where a place of the room is. */
  Spot spot(PlacePlan plan) {
    double z = floor() + plan.heightMetres();
    double along = plan.offsetMetres();
    return switch (wall(plan)) {
      case "A" -> new Spot(west(), south() + along, z);
      case "B" -> new Spot(west() + along, north(), z);
      case "C" -> new Spot(east(), north() - along, z);
      case "D" -> new Spot(east() - along, south(), z);
      default -> new Spot(west() + along, (south() + north()) / 2, z);
    };
  }

  /** Where the rack of a storey is. */
  static Spot rack(int storey) {
    Room closet = new Room(storey, CLOSET);
    return new Spot(closet.west(), 3, closet.floor() + RACK_HEIGHT_METRES);
  }

  /** Outline as the record writes it. */
  String outline() {
    return corners(west(), south(), east(), north());
  }

  static String hallOutline() {
    return corners(0, DEPTH_METRES, IN_ROW * WIDTH_METRES, DEPTH_METRES + HALL_METRES);
  }

  static String corners(double west, double south, double east, double north) {
    return "[[%1$s, %2$s], [%1$s, %4$s], [%3$s, %4$s], [%3$s, %2$s]]"
        .formatted(metres(west), metres(south), metres(east), metres(north));
  }

  static double width() {
    return IN_ROW * WIDTH_METRES;
  }

  static double depth() {
    return 2 * DEPTH_METRES + HALL_METRES;
  }

  /** A length as the record writes it, to the centimetre. */
  static String metres(double value) {
    return Decimals.of(value, 2) + " m";
  }
}
