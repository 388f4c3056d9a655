package wallbook.assess.location;

import wallbook.quantity.Length;
import wallbook.record.Point;

/** A point or direction on a plan, in metres, for computing with. */
record PlanVector(double xMetres, double yMetres) {
  static PlanVector of(Point point) {
    return new PlanVector(point.x().inMetres(), point.y().inMetres());
  }

  Point toPoint() {
    return new Point(Length.metres(xMetres), Length.metres(yMetres));
  }

  PlanVector minus(PlanVector other) {
    return new PlanVector(xMetres - other.xMetres, yMetres - other.yMetres);
  }

  /** This point moved along a direction by so many times its length. */
  PlanVector plus(PlanVector direction, double times) {
    return new PlanVector(xMetres + times * direction.xMetres, yMetres + times * direction.yMetres);
  }

  /** This direction turned a quarter to the left. */
  PlanVector turnedLeft() {
    return new PlanVector(-yMetres, xMetres);
  }

  double length() {
    return Math.hypot(xMetres, yMetres);
  }
}
