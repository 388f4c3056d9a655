package wallbook.quantity;

/**
 * A length to be laid out or read on a tape: a tie, an offset, a coordinate of a place. A type of
 * its own because readers want it to the half inch or the centimetre however long it is, where a
 * {@link Length} of run is printed in whole feet.
 *
 * <p>Held in metres.
 *
 * @param inMetres the quantity in metres
 */
public record TapedLength(double inMetres) implements Quantity, Comparable<TapedLength> {

  public TapedLength {
    Checks.finite("TapedLength", inMetres);
  }

  /** Makes the quantity from a length. */
  public static TapedLength of(Length length) {
    return new TapedLength(length.inMetres());
  }

  /** The same length as one of run. */
  public Length asLength() {
    return Length.metres(inMetres);
  }

  public TapedLength minus(TapedLength other) {
    return new TapedLength(inMetres - other.inMetres);
  }

  @Override
  public int compareTo(TapedLength other) {
    return Double.compare(inMetres, other.inMetres);
  }
}
