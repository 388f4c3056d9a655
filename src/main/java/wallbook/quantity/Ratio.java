package wallbook.quantity;

/**
 * A dimensionless share, printed in per cent.
 *
 * <p>Held in parts of one; made by a factory and read by an accessor that name their unit.
 *
 * @param inFraction the quantity in parts of one
 */
public record Ratio(double inFraction) implements Quantity, Comparable<Ratio> {
  private static final double FRACTION_PER_PERCENT = 1e-2;

  public Ratio {
    Checks.finite("Ratio", inFraction);
  }

  /** Makes the quantity from parts of one. */
  public static Ratio fraction(double fraction) {
    return new Ratio(fraction);
  }

  /** Makes the quantity from per cent. */
  public static Ratio percent(double percent) {
    return new Ratio(percent * FRACTION_PER_PERCENT);
  }

  /** The quantity in per cent. */
  public double inPercent() {
    return inFraction / FRACTION_PER_PERCENT;
  }

  public Ratio minus(Ratio other) {
    return new Ratio(inFraction - other.inFraction);
  }

  @Override
  public int compareTo(Ratio other) {
    return Double.compare(inFraction, other.inFraction);
  }
}
