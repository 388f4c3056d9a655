package wallbook.quantity;

/**
 * A number of whole things: fibres, connectors, cables that still fit.
 *
 * @param number how many; negative only as a margin (that many too few)
 */
public record Count(int number) implements Quantity, Comparable<Count> {

  /** Makes the count of the given number. */
  public static Count of(int number) {
    return new Count(number);
  }

  public Count minus(Count other) {
    return new Count(number - other.number);
  }

  @Override
  public int compareTo(Count other) {
    return Integer.compare(number, other.number);
  }
}
