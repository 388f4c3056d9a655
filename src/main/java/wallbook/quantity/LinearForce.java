package wallbook.quantity;

/**
 * Force per length: sidewall pressure, or the weight of a cable per length.
 *
 * <p>Held in newtons per metre; made by a factory and read by an accessor that name their unit.
 *
 * @param inNewtonsPerMetre the quantity in newtons per metre
 */
public record LinearForce(double inNewtonsPerMetre) implements Quantity, Comparable<LinearForce> {
  private static final double NEWTONS_PER_METRE_PER_POUNDS_FORCE_PER_FOOT =
      4.4482216152605 / 0.3048;

  public LinearForce {
    Checks.finite("LinearForce", inNewtonsPerMetre);
  }

  /** Makes the quantity from newtons per metre. */
  public static LinearForce newtonsPerMetre(double newtonsPerMetre) {
    return new LinearForce(newtonsPerMetre);
  }

  /** Makes the quantity from pounds-force per foot. */
  public static LinearForce poundsForcePerFoot(double poundsForcePerFoot) {
    return new LinearForce(poundsForcePerFoot * NEWTONS_PER_METRE_PER_POUNDS_FORCE_PER_FOOT);
  }

  /** The quantity in pounds-force per foot. */
  public double inPoundsForcePerFoot() {
    return inNewtonsPerMetre / NEWTONS_PER_METRE_PER_POUNDS_FORCE_PER_FOOT;
  }

  public LinearForce times(double factor) {
    return new LinearForce(inNewtonsPerMetre * factor);
  }

  @Override
  public int compareTo(LinearForce other) {
    return Double.compare(inNewtonsPerMetre, other.inNewtonsPerMetre);
  }
}
