package wallbook.stock;

/**
 * A rectangle on a page or a label, in millimetres.
 *
 * @param xMm from the left edge
 * @param yMm from the upper edge, downward
 */
public record LabelArea(double xMm, double yMm, double widthMm, double heightMm) {
  /** What counts as the same place: far below what a printer resolves. */
  private static final double TOLERANCE_MM = 0.001;

  public double rightMm() {
    return xMm + widthMm;
  }

  public double bottomMm() {
    return yMm + heightMm;
  }

  /** This area without a border of the given width. */
  public LabelArea inset(double borderMm) {
    return new LabelArea(
        xMm + borderMm,
        yMm + borderMm,
        Math.max(0, widthMm - 2 * borderMm),
        Math.max(0, heightMm - 2 * borderMm));
  }

  /** This area moved to the right and down. */
  public LabelArea moved(double rightMm, double downMm) {
    return new LabelArea(xMm + rightMm, yMm + downMm, widthMm, heightMm);
  }

  /** Whether the other area lies wholly in this one; edges may touch. */
  public boolean holds(LabelArea other) {
    return other.xMm >= xMm - TOLERANCE_MM
        && other.yMm >= yMm - TOLERANCE_MM
        && other.rightMm() <= rightMm() + TOLERANCE_MM
        && other.bottomMm() <= bottomMm() + TOLERANCE_MM;
  }
}
