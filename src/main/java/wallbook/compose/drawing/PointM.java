package wallbook.compose.drawing;

/** A point of a plan in metres: {@code xM} to the right, {@code yM} up the page. */
public record PointM(double xM, double yM) {
  public PointM {
    Values.finite("xM", xM);
    Values.finite("yM", yM);
  }

  /** Straight distance in metres. */
  public double distanceM(PointM other) {
    return Math.hypot(other.xM - xM, other.yM - yM);
  }
}
