package wallbook.quantity;

/**
 * A plane angle.
 *
 * <p>Held in radians; made by a factory and read by an accessor that name their unit.
 *
 * @param inRadians the quantity in radians
 */
public record Angle(double inRadians) implements Quantity, Comparable<Angle> {
  private static final double RADIANS_PER_DEGREES = Math.PI / 180;

  public Angle {
    Checks.finite("Angle", inRadians);
  }

  /** Makes the quantity from radians. */
  public static Angle radians(double radians) {
    return new Angle(radians);
  }

  /** Makes the quantity from degrees. */
  public static Angle degrees(double degrees) {
    return new Angle(degrees * RADIANS_PER_DEGREES);
  }

  /** The quantity in degrees. */
  public double inDegrees() {
    return inRadians / RADIANS_PER_DEGREES;
  }

  public Angle plus(Angle other) {
    return new Angle(inRadians + other.inRadians);
  }

  public Angle minus(Angle other) {
    return new Angle(inRadians - other.inRadians);
  }

  public Angle times(double factor) {
    return new Angle(inRadians * factor);
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(inRadians, other.inRadians);
  }
}
