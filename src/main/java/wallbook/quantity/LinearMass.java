package wallbook.quantity;

/**
 * Mass of a cable per length.
 *
 * <p>Held in kilograms per metre; made by a factory and read by an accessor that name their unit.
 *
 * @param inKilogramsPerMetre the quantity in kilograms per metre
 */
public record LinearMass(double inKilogramsPerMetre) implements Quantity, Comparable<LinearMass> {
  private static final double KILOGRAMS_PER_METRE_PER_KILOGRAMS_PER_KILOMETRE = 1e-3;
  private static final double KILOGRAMS_PER_METRE_PER_POUNDS_PER_THOUSAND_FEET = 0.45359237 / 304.8;

  public LinearMass {
    Checks.finite("LinearMass", inKilogramsPerMetre);
  }

  /** Makes the quantity from kilograms per metre. */
  public static LinearMass kilogramsPerMetre(double kilogramsPerMetre) {
    return new LinearMass(kilogramsPerMetre);
  }

  /** Makes the quantity from kilograms per kilometre. */
  public static LinearMass kilogramsPerKilometre(double kilogramsPerKilometre) {
    return new LinearMass(kilogramsPerKilometre * KILOGRAMS_PER_METRE_PER_KILOGRAMS_PER_KILOMETRE);
  }

  /** Makes the quantity from pounds per 1000 feet. */
  public static LinearMass poundsPerThousandFeet(double poundsPerThousandFeet) {
    return new LinearMass(poundsPerThousandFeet * KILOGRAMS_PER_METRE_PER_POUNDS_PER_THOUSAND_FEET);
  }

  /** The quantity in kilograms per kilometre. */
  public double inKilogramsPerKilometre() {
    return inKilogramsPerMetre / KILOGRAMS_PER_METRE_PER_KILOGRAMS_PER_KILOMETRE;
  }

  /** The quantity in pounds per 1000 feet. */
  public double inPoundsPerThousandFeet() {
    return inKilogramsPerMetre / KILOGRAMS_PER_METRE_PER_POUNDS_PER_THOUSAND_FEET;
  }

  public LinearMass plus(LinearMass other) {
    return new LinearMass(inKilogramsPerMetre + other.inKilogramsPerMetre);
  }

  public LinearMass times(double factor) {
    return new LinearMass(inKilogramsPerMetre * factor);
  }

  /** Weight per length under standard gravity, 9.80665 m/s². */
  public LinearForce weight() {
    return LinearForce.newtonsPerMetre(inKilogramsPerMetre * 9.80665);
  }

  @Override
  public int compareTo(LinearMass other) {
    return Double.compare(inKilogramsPerMetre, other.inKilogramsPerMetre);
  }
}
