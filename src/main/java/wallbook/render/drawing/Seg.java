package wallbook.render.drawing;

/** A straight line between two points of the sheet. */
record Seg(Pt a, Pt b) {
  double length() {
    return b.minus(a).length();
  }

  /** Whether the two cross or touch. */
  boolean meets(Seg other) {
    double d1 = side(other.a);
    double d2 = side(other.b);
    double d3 = other.side(a);
    double d4 = other.side(b);
    if (d1 * d2 < 0 && d3 * d4 < 0) {
      return true;
    }
    return (d1 == 0 && covers(other.a))
        || (d2 == 0 && covers(other.b))
        || (d3 == 0 && other.covers(a))
        || (d4 == 0 && other.covers(b));
  }

  double distanceTo(Pt point) {
    Pt along = b.minus(a);
    double square = along.x() * along.x() + along.y() * along.y();
    if (square == 0) {
      return point.minus(a).length();
    }
    Pt from = point.minus(a);
    double share = (from.x() * along.x() + from.y() * along.y()) / square;
    return point.minus(a.toward(b, Math.max(0, Math.min(1, share)))).length();
  }

  private double side(Pt point) {
    return (b.x() - a.x()) * (point.y() - a.y()) - (b.y() - a.y()) * (point.x() - a.x());
  }

  private boolean covers(Pt point) {
    return Math.min(a.x(), b.x()) <= point.x()
        && point.x() <= Math.max(a.x(), b.x())
        && Math.min(a.y(), b.y()) <= point.y()
        && point.y() <= Math.max(a.y(), b.y());
  }
}
