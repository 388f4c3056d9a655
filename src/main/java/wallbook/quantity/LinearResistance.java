package wallbook.quantity;

/**
 * Resistance of a conductor per length of conductor.
 *
 * <p>Held in ohms per metre; made by a factory and read by an accessor that name their unit.
 *
 * @param inOhmsPerMetre the quantity in ohms per metre
 */
public record LinearResistance(double inOhmsPerMetre)
    implements Quantity, Comparable<LinearResistance> {
  private static final double OHMS_PER_METRE_PER_OHMS_PER_KILOMETRE = 1e-3;
  private static final double OHMS_PER_METRE_PER_OHMS_PER_THOUSAND_FEET = 1.0 / 304.8;

  public LinearResistance {
    Checks.finite("LinearResistance", inOhmsPerMetre);
  }

  /** Makes the quantity from ohms per metre. */
  public static LinearResistance ohmsPerMetre(double ohmsPerMetre) {
    return new LinearResistance(ohmsPerMetre);
  }

  /** Makes the quantity from ohms per kilometre. */
  public static LinearResistance ohmsPerKilometre(double ohmsPerKilometre) {
    return new LinearResistance(ohmsPerKilometre * OHMS_PER_METRE_PER_OHMS_PER_KILOMETRE);
  }

  /** Makes the quantity from ohms per 1000 feet. */
  public static LinearResistance ohmsPerThousandFeet(double ohmsPerThousandFeet) {
    return new LinearResistance(ohmsPerThousandFeet * OHMS_PER_METRE_PER_OHMS_PER_THOUSAND_FEET);
  }

  /** The quantity in ohms per kilometre. */
  public double inOhmsPerKilometre() {
    return inOhmsPerMetre / OHMS_PER_METRE_PER_OHMS_PER_KILOMETRE;
  }

  /** The quantity in ohms per 1000 feet. */
  public double inOhmsPerThousandFeet() {
    return inOhmsPerMetre / OHMS_PER_METRE_PER_OHMS_PER_THOUSAND_FEET;
  }

  public LinearResistance times(double factor) {
    return new LinearResistance(inOhmsPerMetre * factor);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(LinearResistance other) {
    return inOhmsPerMetre / other.inOhmsPerMetre;
  }

  /** Resistance of a conductor of this kind and of the given length, one way. */
  public Resistance over(Length length) {
    return Resistance.ohms(inOhmsPerMetre * length.inMetres());
  }

  @Override
  public int compareTo(LinearResistance other) {
    return Double.compare(inOhmsPerMetre, other.inOhmsPerMetre);
  }
}
