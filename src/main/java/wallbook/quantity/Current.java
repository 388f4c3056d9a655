package wallbook.quantity;

/**
 * An electrical current.
 *
 * <p>Held in amperes; made by a factory and read by an accessor that name their unit.
 *
 * @param inAmperes the quantity in amperes
 */
public record Current(double inAmperes) implements Quantity, Comparable<Current> {
  private static final double AMPERES_PER_MILLIAMPERES = 1e-3;

  public Current {
    Checks.finite("Current", inAmperes);
  }

  /** Makes the quantity from amperes. */
  public static Current amperes(double amperes) {
    return new Current(amperes);
  }

  /** Makes the quantity from milliamperes. */
  public static Current milliamperes(double milliamperes) {
    return new Current(milliamperes * AMPERES_PER_MILLIAMPERES);
  }

  /** The quantity in milliamperes. */
  public double inMilliamperes() {
    return inAmperes / AMPERES_PER_MILLIAMPERES;
  }

  public Current minus(Current other) {
    return new Current(inAmperes - other.inAmperes);
  }

  @Override
  public int compareTo(Current other) {
    return Double.compare(inAmperes, other.inAmperes);
  }
}
