package wallbook.quantity;

/**
 * A plain multiple without a unit, printed as a decimal number: a jam ratio, a weight correction, a
 * coefficient of friction. A share of a whole is a {@link Ratio}.
 *
 * @param value how many times
 */
public record Factor(double value) implements Quantity, Comparable<Factor> {

  public Factor {
    Checks.finite("Factor", value);
  }

  /** Makes the factor of the given value. */
  public static Factor of(double value) {
    return new Factor(value);
  }

  public Factor minus(Factor other) {
    return new Factor(value - other.value);
  }

  @Override
  public int compareTo(Factor other) {
    return Double.compare(value, other.value);
  }
}
