package wallbook.geometry;

import wallbook.record.Point;

/** A straight side of an outline from one corner to the next, in metres. */
record Side(double x1M, double y1M, double x2M, double y2M) {
  static Side between(Point a, Point b) {
    return new Side(a.x().inMetres(), a.y().inMetres(), b.x().inMetres(), b.y().inMetres());
  }

  double lengthM() {
    return Math.hypot(x2M - x1M, y2M - y1M);
  }

  double distanceM(double xM, double yM) {
    double squared = lengthM() * lengthM();
    double share =
        squared == 0 ? 0 : ((xM - x1M) * (x2M - x1M) + (yM - y1M) * (y2M - y1M)) / squared;
    double held = Math.max(0, Math.min(1, share));
    return Math.hypot(xM - (x1M + held * (x2M - x1M)), yM - (y1M + held * (y2M - y1M)));
  }

  /** Whether a level line crosses it; of a corner on the line only the lower side counts. */
  boolean crossesLevel(double yM) {
    return (y1M > yM) != (y2M > yM);
  }

  /** Where it is at a level that it crosses. */
  double xAt(double yM) {
    return x1M + (yM - y1M) / (y2M - y1M) * (x2M - x1M);
  }

  /** Whether the two have a point in common. */
  boolean meets(Side other) {
    int a = turn(other.x1M, other.y1M);
    int b = turn(other.x2M, other.y2M);
    int c = other.turn(x1M, y1M);
    int d = other.turn(x2M, y2M);
    if (a != b && c != d) {
      return true;
    }
    return (a == 0 && spans(other.x1M, other.y1M))
        || (b == 0 && spans(other.x2M, other.y2M))
        || (c == 0 && other.spans(x1M, y1M))
        || (d == 0 && other.spans(x2M, y2M));
  }

  /** Whether the next side runs back along this one. */
  boolean foldsBackInto(Side next) {
    double along = (x2M - x1M) * (next.x2M - next.x1M) + (y2M - y1M) * (next.y2M - next.y1M);
    return turn(next.x2M, next.y2M) == 0 && along < 0;
  }

  /** Side of this line that a point lies on: 1 left, -1 right, 0 on it. */
  private int turn(double xM, double yM) {
    double cross = (x2M - x1M) * (yM - y1M) - (y2M - y1M) * (xM - x1M);
    double negligible = 1e-9 * Math.max(1e-6, lengthM());
    return Math.abs(cross) <= negligible ? 0 : (int) Math.signum(cross);
  }

  private boolean spans(double xM, double yM) {
    return distanceM(xM, yM) <= 1e-9;
  }
}
