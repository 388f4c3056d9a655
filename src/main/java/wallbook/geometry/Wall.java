package wallbook.geometry;

import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.record.Point;

/**
 * One wall of an outline.
 *
 * @param letter A for the wall from the first corner to the second, then B, C, ...
 * @param start left-hand corner as seen by somebody in the room who faces the wall
 * @param end right-hand corner
 */
public record Wall(String letter, Point start, Point end) {

  /** Length from corner to corner. */
  public Length length() {
    return Length.metres(Math.hypot(dxMetres(), dyMetres()));
  }

  /** The point on the wall at a distance from its left-hand corner. */
  public Point at(Length offset) {
    double share = offset.inMetres() / length().inMetres();
    return new Point(
        Length.metres(start.x().inMetres() + share * dxMetres()),
        Length.metres(start.y().inMetres() + share * dyMetres()));
  }

  /**
   * Direction that somebody in the room who faces the wall looks to, clockwise from the top of the
   * plan, from 0° up to but not including 360°.
   */
  public Angle facing() {
    double degrees = Math.toDegrees(Math.atan2(-dyMetres(), dxMetres()));
    return Angle.degrees((degrees % 360 + 360) % 360);
  }

  private double dxMetres() {
    return end.x().inMetres() - start.x().inMetres();
  }

  private double dyMetres() {
    return end.y().inMetres() - start.y().inMetres();
  }
}
