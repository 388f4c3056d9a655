package wallbook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import wallbook.wording.QuantityPrinter;
import wallbook.wording.UnitSystem;

class TapedLengthTest {
  private static final TapedLength TIE = TapedLength.of(Length.inches(31 * 12 + 6.5));

  @Test
  void isPrintedToTheHalfInchOrTheCentimetreHoweverLong() {
    assertEquals(
        "31\u00a0ft 6½\u00a0in",
        new QuantityPrinter(Locale.US, UnitSystem.FEET_AND_INCHES)
            .print(TIE)
            .replaceFirst("ft\u00a0", "ft "));
    // 378.5 in × 0.0254 = 9.6139 m
    assertEquals("9.61\u00a0m", new QuantityPrinter(Locale.US, UnitSystem.METRIC).print(TIE));
  }

  @Test
  void isALengthThatCanBeTakenFromAnother() {
    assertEquals(378.5, TIE.asLength().inInches(), 1e-9);
    TapedLength foot = TapedLength.of(Length.feet(1));
    assertEquals(366.5, TIE.minus(foot).asLength().inInches(), 1e-9);
    assertTrue(foot.compareTo(TIE) < 0);
  }

  @Test
  void refusesWhatIsNoNumber() {
    assertThrows(IllegalArgumentException.class, () -> new TapedLength(Double.NaN));
  }
}
