package wallbook.quantity;

/**
 * A frequency.
 *
 * <p>Held in hertz; made by a factory and read by an accessor that name their unit.
 *
 * @param inHertz the quantity in hertz
 */
public record Frequency(double inHertz) implements Quantity, Comparable<Frequency> {
  private static final double HERTZ_PER_KILOHERTZ = 1e3;
  private static final double HERTZ_PER_MEGAHERTZ = 1e6;

  public Frequency {
    Checks.finite("Frequency", inHertz);
  }

  /** Makes the quantity from hertz. */
  public static Frequency hertz(double hertz) {
    return new Frequency(hertz);
  }

  /** Makes the quantity from kilohertz. */
  public static Frequency kilohertz(double kilohertz) {
    return new Frequency(kilohertz * HERTZ_PER_KILOHERTZ);
  }

  /** Makes the quantity from megahertz. */
  public static Frequency megahertz(double megahertz) {
    return new Frequency(megahertz * HERTZ_PER_MEGAHERTZ);
  }

  /** The quantity in megahertz. */
  public double inMegahertz() {
    return inHertz / HERTZ_PER_MEGAHERTZ;
  }

  @Override
  public int compareTo(Frequency other) {
    return Double.compare(inHertz, other.inHertz);
  }
}
