package wallbook.quantity;

/**
 * An electrical resistance or the magnitude of an impedance.
 *
 * <p>Held in ohms; made by a factory and read by an accessor that name their unit.
 *
 * @param inOhms the quantity in ohms
 */
public record Resistance(double inOhms) implements Quantity, Comparable<Resistance> {

  public Resistance {
    Checks.finite("Resistance", inOhms);
  }

  /** Makes the quantity from ohms. */
  public static Resistance ohms(double ohms) {
    return new Resistance(ohms);
  }

  public Resistance plus(Resistance other) {
    return new Resistance(inOhms + other.inOhms);
  }

  public Resistance minus(Resistance other) {
    return new Resistance(inOhms - other.inOhms);
  }

  public Resistance times(double factor) {
    return new Resistance(inOhms * factor);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(Resistance other) {
    return inOhms / other.inOhms;
  }

  @Override
  public int compareTo(Resistance other) {
    return Double.compare(inOhms, other.inOhms);
  }
}
