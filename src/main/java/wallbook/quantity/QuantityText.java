package wallbook.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes a quantity as a record has it, so that {@link QuantityParser} reads exactly the same
 * quantity again: with the fewest decimals that do, in the first unit preferred that does.
 */
public final class QuantityText {
  private static final int MOST_DECIMALS = 6;

  private QuantityText() {}

  /**
   * The text of a quantity.
   *
   * @param preferred units to try first, such as {@code m} before {@code ft}; those of another type
   *     are passed over
   */
  public static String of(Quantity quantity, List<String> preferred) {
    List<String> all = QuantityParser.unitsOf(quantity.getClass());
    List<String> units =
        Stream.concat(preferred.stream().filter(all::contains), all.stream()).distinct().toList();
    for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
      for (String unit : units) {
        String text = inUnit(quantity, unit, decimals);
        if (reads(quantity, text)) {
          return text;
        }
      }
    }
    for (String unit : units) {
      double nearest = QuantityParser.in(quantity, unit);
      for (double value : new double[] {nearest, Math.nextUp(nearest), Math.nextDown(nearest)}) {
        String text = new BigDecimal(Double.toString(value)).toPlainString() + " " + unit;
        if (reads(quantity, text)) {
          return text;
        }
      }
    }
    throw new IllegalStateException("no unit writes " + quantity + " exactly");
  }

  private static boolean reads(Quantity quantity, String text) {
    try {
      return QuantityParser.parse(quantity.getClass(), text).equals(quantity);
    } catch (QuantityParser.NotAQuantity e) {
      return false;
    }
  }

  private static String inUnit(Quantity quantity, String unit, int decimals) {
    return BigDecimal.valueOf(QuantityParser.in(quantity, unit))
            .setScale(decimals, RoundingMode.HALF_EVEN)
            .toPlainString()
        + " "
        + unit;
  }
}
