package wallbook.quantity;

/**
 * A power level relative to one milliwatt.
 *
 * <p>Held in dBm; made by a factory and read by an accessor that name their unit.
 *
 * @param inDbm the quantity in dBm
 */
public record PowerLevel(double inDbm) implements Quantity, Comparable<PowerLevel> {

  public PowerLevel {
    Checks.finite("PowerLevel", inDbm);
  }

  /** Makes the quantity from dBm. */
  public static PowerLevel dbm(double dbm) {
    return new PowerLevel(dbm);
  }

  /** Loss or gain that leads from the other level up to this one. */
  public Decibels above(PowerLevel other) {
    return Decibels.decibels(inDbm - other.inDbm);
  }

  @Override
  public int compareTo(PowerLevel other) {
    return Double.compare(inDbm, other.inDbm);
  }
}
