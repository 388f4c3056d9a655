package wallbook.assess.location;

import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.record.Point;

/**
 * Position of a point from its horizontal distances to two known points, as in any surveying
 * textbook (distance-distance intersection).
 */
public final class TwoTies {
  /** Share of the base below which a miss or a height is rounding in the last binary digits. */
  private static final double ROUNDING = 1e-12;

  private TwoTies() {}

  /**
   * With A at the origin, B at distance b along the x axis and the ties r and s: {@code x = (r² −
   * s² + b²)/(2b)}, {@code y = ±√(r² − x²)}; angle at the point by {@code cos γ = (r² + s² −
   * b²)/(2rs)}. The ties contradict each other if {@code r + s < b} or {@code |r − s| > b}; by no
   * more than the slack, they are taken to touch.
   *
   * @param slack by how much ties may miss each other and still count as touching
   * @throws IllegalArgumentException if both corners are the same point
   */
  public static TieFix solve(Point a, Length toA, Point b, Length toB, Length slack) {
    PlanVector from = PlanVector.of(a);
    PlanVector along = PlanVector.of(b).minus(from);
    double base = along.length();
    if (base == 0) {
      throw new IllegalArgumentException("two ties from the same point");
    }
    double r = toA.inMetres();
    double s = toB.inMetres();
    double missing = Math.max(base - (r + s), Math.abs(r - s) - base);
    if (missing > slack.inMetres() + ROUNDING * base) {
      return new TieFix.Contradiction(Length.metres(missing));
    }
    double x = (r * r - s * s + base * base) / (2 * base);
    double ySquared = r * r - x * x;
    PlanVector foot = from.plus(along, x / base);
    if (ySquared <= ROUNDING * base * base) {
      return new TieFix.OnLine(foot.toPoint());
    }
    double share = Math.sqrt(ySquared) / base;
    PlanVector left = along.turnedLeft();
    return new TieFix.Crossing(
        foot.plus(left, share).toPoint(),
        foot.plus(left, -share).toPoint(),
        angleAtPoint(r, s, base));
  }

  private static Angle angleAtPoint(double r, double s, double base) {
    double cosine = (r * r + s * s - base * base) / (2 * r * s);
    return Angle.radians(Math.acos(Math.max(-1, Math.min(1, cosine))));
  }
}
