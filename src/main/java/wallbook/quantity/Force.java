package wallbook.quantity;

/**
 * A force, for instance a pulling tension.
 *
 * <p>Held in newtons; made by a factory and read by an accessor that name their unit.
 *
 * @param inNewtons the quantity in newtons
 */
public record Force(double inNewtons) implements Quantity, Comparable<Force> {
  private static final double NEWTONS_PER_POUNDS_FORCE = 4.4482216152605;

  public Force {
    Checks.finite("Force", inNewtons);
  }

  /** Makes the quantity from newtons. */
  public static Force newtons(double newtons) {
    return new Force(newtons);
  }

  /** Makes the quantity from pounds-force (exactly 4.4482216152605 N). */
  public static Force poundsForce(double poundsForce) {
    return new Force(poundsForce * NEWTONS_PER_POUNDS_FORCE);
  }

  /** The quantity in pounds-force (exactly 4.4482216152605 N). */
  public double inPoundsForce() {
    return inNewtons / NEWTONS_PER_POUNDS_FORCE;
  }

  public Force minus(Force other) {
    return new Force(inNewtons - other.inNewtons);
  }

  public Force times(double factor) {
    return new Force(inNewtons * factor);
  }

  @Override
  public int compareTo(Force other) {
    return Double.compare(inNewtons, other.inNewtons);
  }
}
