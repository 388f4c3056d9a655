package wallbook.quantity;

/**
 * The level of a signal on coaxial cable, relative to one millivolt.
 *
 * <p>Held in dBmV; made by a factory and read by an accessor that name their unit.
 *
 * @param inDbmv the quantity in dBmV
 */
public record SignalLevel(double inDbmv) implements Quantity, Comparable<SignalLevel> {

  public SignalLevel {
    Checks.finite("SignalLevel", inDbmv);
  }

  /** Makes the quantity from dBmV. */
  public static SignalLevel dbmv(double dbmv) {
    return new SignalLevel(dbmv);
  }

  /** The level before the given loss. */
  public SignalLevel before(Decibels loss) {
    return new SignalLevel(inDbmv + loss.inDecibels());
  }

  @Override
  public int compareTo(SignalLevel other) {
    return Double.compare(inDbmv, other.inDbmv);
  }
}
