package wallbook.assess.location;

import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.record.Point;

/** What two ties from two corners come to. */
public sealed interface TieFix {

  /**
   * Two mirror points; which one is meant, the side decides.
   *
   * @param left on the left as seen from the first corner towards the second
   * @param right on the right
   * @param atPoint angle at either point between its two ties
   */
  record Crossing(Point left, Point right, Angle atPoint) implements TieFix {}

  /**
   * One point, on the straight line through both corners: the ties just touch. Its place across the
   * line is as good as unknown.
   */
  record OnLine(Point point) implements TieFix {}

  /**
   * The ties cannot meet.
   *
   * @param by how much they miss each other
   */
  record Contradiction(Length by) implements TieFix {}
}
