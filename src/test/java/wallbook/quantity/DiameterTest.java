package wallbook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import wallbook.wording.QuantityPrinter;
import wallbook.wording.UnitSystem;

class DiameterTest {
  @Test
  void anInchIsExactly254TenthsOfAMillimetre() {
    assertEquals(25.4, Diameter.inches(1).inMillimetres(), 1e-12); // international inch, 1959
    assertEquals(1, Diameter.millimetres(25.4).inInches(), 1e-12);
    assertEquals(0.0254, Diameter.of(Length.inches(1)).inMetres(), 1e-15);
    assertEquals(1, Diameter.inches(1).asLength().inInches(), 1e-12);
  }

  @Test
  void addsSubtractsScalesAndCompares() {
    Diameter quarter = Diameter.inches(0.25);
    Diameter half = Diameter.inches(0.5);
    assertEquals(0.75, quarter.plus(half).inInches(), 1e-12);
    assertEquals(0.25, half.minus(quarter).inInches(), 1e-12);
    assertEquals(1.0, quarter.times(4).inInches(), 1e-12);
    assertEquals(2.0, half.ratioTo(quarter), 1e-12);
    assertTrue(quarter.compareTo(half) < 0);
  }

  @Test
  void isPrintedToHundredthsOfAnInchOrTenthsOfAMillimetre() {
    Diameter bore = Diameter.inches(1.049);
    QuantityPrinter inches = new QuantityPrinter(Locale.US, UnitSystem.FEET_AND_INCHES);
    QuantityPrinter metric = new QuantityPrinter(Locale.US, UnitSystem.METRIC);
    assertEquals("1.05\u00a0in", inches.print(bore));
    assertEquals("26.6\u00a0mm", metric.print(bore));
  }

  @Test
  void refusesWhatIsNoNumber() {
    assertThrows(IllegalArgumentException.class, () -> Diameter.metres(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Factor.of(Double.POSITIVE_INFINITY));
  }

  @Test
  void aFactorIsPrintedWithTwoDecimalsAndNoUnit() {
    QuantityPrinter printer = new QuantityPrinter(Locale.US, UnitSystem.METRIC);
    assertEquals("2.86", printer.print(Factor.of(2.857)));
    assertEquals(0.5, Factor.of(3).minus(Factor.of(2.5)).value(), 1e-12);
    assertTrue(Factor.of(1).compareTo(Factor.of(2)) < 0);
  }
}
