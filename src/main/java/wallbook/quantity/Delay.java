package wallbook.quantity;

/**
 * A time of propagation or a difference of two.
 *
 * <p>Held in seconds; made by a factory and read by an accessor that name their unit.
 *
 * @param inSeconds the quantity in seconds
 */
public record Delay(double inSeconds) implements Quantity, Comparable<Delay> {
  private static final double SECONDS_PER_NANOSECONDS = 1e-9;

  public Delay {
    Checks.finite("Delay", inSeconds);
  }

  /** Makes the quantity from seconds. */
  public static Delay seconds(double seconds) {
    return new Delay(seconds);
  }

  /** Makes the quantity from nanoseconds. */
  public static Delay nanoseconds(double nanoseconds) {
    return new Delay(nanoseconds * SECONDS_PER_NANOSECONDS);
  }

  /** The quantity in nanoseconds. */
  public double inNanoseconds() {
    return inSeconds / SECONDS_PER_NANOSECONDS;
  }

  public Delay minus(Delay other) {
    return new Delay(inSeconds - other.inSeconds);
  }

  @Override
  public int compareTo(Delay other) {
    return Double.compare(inSeconds, other.inSeconds);
  }
}
