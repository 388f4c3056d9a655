package wallbook.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as records write them, whatever the language of the machine. */
final class Decimals {
  private Decimals() {}

  static String of(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }
}
