package wallbook.geometry;

import wallbook.quantity.Length;
import wallbook.record.Point;

/**
 * A point in the building.
 *
 * @param plan on the plan that all floors share
 * @param height above the finished floor of the entrance level
 */
public record BuildingPoint(Point plan, Length height) {

  /** Straight-line distance: {@code √(Δx² + Δy² + Δz²)}. */
  public Length distanceTo(BuildingPoint other) {
    double up = height.minus(other.height).inMetres();
    return Length.metres(Math.hypot(horizontal(plan, other.plan).inMetres(), up));
  }

  /** Horizontal distance between two points of a plan. */
  public static Length horizontal(Point a, Point b) {
    return Length.metres(Math.hypot(a.x().minus(b.x()).inMetres(), a.y().minus(b.y()).inMetres()));
  }
}
