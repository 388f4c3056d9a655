package wallbook.quantity;

/**
 * An electrical power.
 *
 * <p>Held in watts; made by a factory and read by an accessor that name their unit.
 *
 * @param inWatts the quantity in watts
 */
public record Power(double inWatts) implements Quantity, Comparable<Power> {
  private static final double WATTS_PER_MILLIWATTS = 1e-3;

  public Power {
    Checks.finite("Power", inWatts);
  }

  /** Makes the quantity from watts. */
  public static Power watts(double watts) {
    return new Power(watts);
  }

  /** Makes the quantity from milliwatts. */
  public static Power milliwatts(double milliwatts) {
    return new Power(milliwatts * WATTS_PER_MILLIWATTS);
  }

  public Power minus(Power other) {
    return new Power(inWatts - other.inWatts);
  }

  public Power times(double factor) {
    return new Power(inWatts * factor);
  }

  @Override
  public int compareTo(Power other) {
    return Double.compare(inWatts, other.inWatts);
  }
}
