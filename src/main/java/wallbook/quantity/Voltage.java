package wallbook.quantity;

/**
 * A voltage.
 *
 * <p>Held in volts; made by a factory and read by an accessor that name their unit.
 *
 * @param inVolts the quantity in volts
 */
public record Voltage(double inVolts) implements Quantity, Comparable<Voltage> {
  private static final double VOLTS_PER_MILLIVOLTS = 1e-3;

  public Voltage {
    Checks.finite("Voltage", inVolts);
  }

  /** Makes the quantity from volts. */
  public static Voltage volts(double volts) {
    return new Voltage(volts);
  }

  /** Makes the quantity from millivolts. */
  public static Voltage millivolts(double millivolts) {
    return new Voltage(millivolts * VOLTS_PER_MILLIVOLTS);
  }

  public Voltage minus(Voltage other) {
    return new Voltage(inVolts - other.inVolts);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(Voltage other) {
    return inVolts / other.inVolts;
  }

  @Override
  public int compareTo(Voltage other) {
    return Double.compare(inVolts, other.inVolts);
  }
}
