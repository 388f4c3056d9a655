package wallbook.compose.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The outline of a room or a house seen from above, its corners listed clockwise in metres. Wall 0
 * ("A") runs from the first corner to the second; somebody who faces a wall from inside has its
 * start at the left hand.
 *
 * @param corners at least three, clockwise, the first not repeated at the end
 */
public record Outline(List<PointM> corners) {
  public Outline {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("an outline needs three corners or more");
    }
    if (signedAreaM2(corners) >= 0) {
      throw new IllegalArgumentException(
          "the corners of an outline run clockwise and enclose an area");
    }
  }

  /** The outline of corners in either direction; the first corner stays first. */
  public static Outline ofCornersInAnyDirection(List<PointM> corners) {
    if (signedAreaM2(corners) < 0) {
      return new Outline(corners);
    }
    List<PointM> turned = new ArrayList<>(corners.subList(1, corners.size()));
    Collections.reverse(turned);
    turned.add(0, corners.get(0));
    return new Outline(turned);
  }

  /** A rectangle whose lower left corner lies at the given point; wall A is its left side. */
  public static Outline rectangle(double leftM, double bottomM, double widthM, double depthM) {
    return new Outline(
        List.of(
            new PointM(leftM, bottomM),
            new PointM(leftM, bottomM + depthM),
            new PointM(leftM + widthM, bottomM + depthM),
            new PointM(leftM + widthM, bottomM)));
  }

  public int wallCount() {
    return corners.size();
  }

  /** Left-hand end of a wall for somebody who faces it from inside. */
  public PointM wallStart(int wall) {
    return corners.get(wall);
  }

  /** Right-hand end of a wall for somebody who faces it from inside. */
  public PointM wallEnd(int wall) {
    return corners.get((wall + 1) % corners.size());
  }

  public double wallLengthM(int wall) {
    return wallStart(wall).distanceM(wallEnd(wall));
  }

  /** The point of a wall at an offset in metres from its left-hand end. */
  public PointM onWall(int wall, double offsetM) {
    PointM start = wallStart(wall);
    PointM end = wallEnd(wall);
    double share = offsetM / wallLengthM(wall);
    return new PointM(
        start.xM() + share * (end.xM() - start.xM()), start.yM() + share * (end.yM() - start.yM()));
  }

  /** The direction of one metre from a wall into the room. */
  public PointM inward(int wall) {
    PointM start = wallStart(wall);
    PointM end = wallEnd(wall);
    double length = wallLengthM(wall);
    return new PointM((end.yM() - start.yM()) / length, (start.xM() - end.xM()) / length);
  }

  /** A for the first wall to Z for the twenty-sixth, then AA, AB and so on. */
  public static String wallLetter(int wall) {
    String last = String.valueOf((char) ('A' + wall % 26));
    return wall < 26 ? last : wallLetter(wall / 26 - 1) + last;
  }

  /** The enclosed area in square metres. */
  public double areaM2() {
    return -signedAreaM2(corners);
  }

  private static double signedAreaM2(List<PointM> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      PointM a = corners.get(i);
      PointM b = corners.get((i + 1) % corners.size());
      twice += a.xM() * b.yM() - b.xM() * a.yM();
    }
    return twice / 2;
  }
}
