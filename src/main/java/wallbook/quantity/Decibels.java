package wallbook.quantity;

/**
 * A ratio of levels in decibels: loss, gain, crosstalk, return loss or a margin between two of
 * them.
 *
 * <p>Held in decibels; made by a factory and read by an accessor that name their unit.
 *
 * @param inDecibels the quantity in decibels
 */
public record Decibels(double inDecibels) implements Quantity, Comparable<Decibels> {

  public Decibels {
    Checks.finite("Decibels", inDecibels);
  }

  /** Makes the quantity from decibels. */
  public static Decibels decibels(double decibels) {
    return new Decibels(decibels);
  }

  public Decibels plus(Decibels other) {
    return new Decibels(inDecibels + other.inDecibels);
  }

  public Decibels minus(Decibels other) {
    return new Decibels(inDecibels - other.inDecibels);
  }

  public Decibels times(double factor) {
    return new Decibels(inDecibels * factor);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(Decibels other) {
    return inDecibels / other.inDecibels;
  }

  @Override
  public int compareTo(Decibels other) {
    return Double.compare(inDecibels, other.inDecibels);
  }
}
