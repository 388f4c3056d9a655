package wallbook.bench;

/** A point of the invented building, in metres from its south-west corner on the ground. */
record Spot(double x, double y, double z) {
  /** Way along walls and floors. */
  double wayTo(Spot other) {
    return Math.abs(x - other.x) + Math.abs(y - other.y) + Math.abs(z - other.z);
  }

  double planDistance(double otherX, double otherY) {
    return Math.hypot(x - otherX, y - otherY);
  }
}
