package wallbook.compose.drawing;

import java.util.List;

/**
 * One wall seen from inside the room.
 *
 * @param ceiling the upper edge from the left-hand corner to the right: {@code xM} is the offset,
 *     {@code yM} the height; two points for a level ceiling, more for a stepped or sloping one
 * @param widthText the wall's length as the reader sees it
 * @param heightText the ceiling height at the left-hand corner as the reader sees it
 */
public record WallElevation(
    Frame frame,
    List<PointM> ceiling,
    String widthText,
    String heightText,
    List<Opening> openings,
    List<ElevationMark> marks,
    ScaleUnit unit)
    implements Drawing {
  public WallElevation {
    ceiling = List.copyOf(ceiling);
    openings = List.copyOf(openings);
    marks = List.copyOf(marks);
    if (ceiling.size() < 2 || ceiling.get(0).xM() != 0) {
      throw new IllegalArgumentException("the ceiling runs from offset 0 to the wall's width");
    }
    for (int i = 1; i < ceiling.size(); i++) {
      if (ceiling.get(i).xM() < ceiling.get(i - 1).xM()) {
        throw new IllegalArgumentException("the ceiling runs from left to right");
      }
    }
    Values.positive("width", ceiling.get(ceiling.size() - 1).xM());
    ceiling.forEach(point -> Values.positive("ceiling height", point.yM()));
  }

  /** The upper edge of a wall under a level ceiling. */
  public static List<PointM> levelCeiling(double widthM, double heightM) {
    return List.of(new PointM(0, heightM), new PointM(widthM, heightM));
  }

  public double widthM() {
    return ceiling.get(ceiling.size() - 1).xM();
  }

  /** The greatest height of the ceiling in metres. */
  public double heightM() {
    return ceiling.stream().mapToDouble(PointM::yM).max().orElseThrow();
  }
}
