package wallbook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import wallbook.wording.QuantityPrinter;
import wallbook.wording.UnitSystem;

class SignalLevelTest {
  @Test
  void theLevelBeforeALossIsHigherByTheLoss() {
    SignalLevel level = SignalLevel.dbmv(-7);

    assertEquals(SignalLevel.dbmv(-1.5), level.before(Decibels.decibels(5.5)));
    assertTrue(level.before(Decibels.decibels(5.5)).compareTo(level) > 0);
  }

  @Test
  void isReadAndPrintedInDecibelsOverOneMillivolt() throws Exception {
    SignalLevel level = QuantityParser.parse(SignalLevel.class, "-7.04 dBmV");

    assertEquals(-7.04, level.inDbmv());
    assertEquals("−7.0\u00a0dBmV", new QuantityPrinter(Locale.US, UnitSystem.METRIC).print(level));
  }
}
