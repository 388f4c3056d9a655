package wallbook.quantity;

/**
 * Loss per length of a cable or fibre.
 *
 * <p>Held in decibels per metre; made by a factory and read by an accessor that name their unit.
 *
 * @param inDecibelsPerMetre the quantity in decibels per metre
 */
public record LinearAttenuation(double inDecibelsPerMetre)
    implements Quantity, Comparable<LinearAttenuation> {
  private static final double DECIBELS_PER_METRE_PER_DECIBELS_PER_KILOMETRE = 1e-3;
  private static final double DECIBELS_PER_METRE_PER_DECIBELS_PER_HUNDRED_METRES = 1e-2;
  private static final double DECIBELS_PER_METRE_PER_DECIBELS_PER_HUNDRED_FEET = 1.0 / 30.48;

  public LinearAttenuation {
    Checks.finite("LinearAttenuation", inDecibelsPerMetre);
  }

  /** Makes the quantity from decibels per kilometre. */
  public static LinearAttenuation decibelsPerKilometre(double decibelsPerKilometre) {
    return new LinearAttenuation(
        decibelsPerKilometre * DECIBELS_PER_METRE_PER_DECIBELS_PER_KILOMETRE);
  }

  /** Makes the quantity from decibels per 100 metres. */
  public static LinearAttenuation decibelsPerHundredMetres(double decibelsPerHundredMetres) {
    return new LinearAttenuation(
        decibelsPerHundredMetres * DECIBELS_PER_METRE_PER_DECIBELS_PER_HUNDRED_METRES);
  }

  /** Makes the quantity from decibels per 100 feet. */
  public static LinearAttenuation decibelsPerHundredFeet(double decibelsPerHundredFeet) {
    return new LinearAttenuation(
        decibelsPerHundredFeet * DECIBELS_PER_METRE_PER_DECIBELS_PER_HUNDRED_FEET);
  }

  /** The quantity in decibels per kilometre. */
  public double inDecibelsPerKilometre() {
    return inDecibelsPerMetre / DECIBELS_PER_METRE_PER_DECIBELS_PER_KILOMETRE;
  }

  /** The quantity in decibels per 100 metres. */
  public double inDecibelsPerHundredMetres() {
    return inDecibelsPerMetre / DECIBELS_PER_METRE_PER_DECIBELS_PER_HUNDRED_METRES;
  }

  /** The quantity in decibels per 100 feet. */
  public double inDecibelsPerHundredFeet() {
    return inDecibelsPerMetre / DECIBELS_PER_METRE_PER_DECIBELS_PER_HUNDRED_FEET;
  }

  public LinearAttenuation plus(LinearAttenuation other) {
    return new LinearAttenuation(inDecibelsPerMetre + other.inDecibelsPerMetre);
  }

  public LinearAttenuation minus(LinearAttenuation other) {
    return new LinearAttenuation(inDecibelsPerMetre - other.inDecibelsPerMetre);
  }

  public LinearAttenuation times(double factor) {
    return new LinearAttenuation(inDecibelsPerMetre * factor);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(LinearAttenuation other) {
    return inDecibelsPerMetre / other.inDecibelsPerMetre;
  }

  /** Loss of a cable of this kind and of the given length. */
  public Decibels over(Length length) {
    return Decibels.decibels(inDecibelsPerMetre * length.inMetres());
  }

  @Override
  public int compareTo(LinearAttenuation other) {
    return Double.compare(inDecibelsPerMetre, other.inDecibelsPerMetre);
  }
}
