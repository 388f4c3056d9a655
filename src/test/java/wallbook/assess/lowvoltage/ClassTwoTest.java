package wallbook.assess.lowvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Voltage;
import wallbook.reference.Tables;

class ClassTwoTest {
  private final ClassTwo classTwo = new ClassTwo(new Tables());

  /** NEC chapter 9 table 11(B); 12 V also by supply makers' guides, 50 V by a trade journal. */
  @ParameterizedTest
  @CsvSource({
    "5, 5, 25",
    "12, 5, 60",
    "20, 5, 100",
    "24, 4.17, 100",
    "48, 2.08, 100",
    "50, 2, 100",
    "60, 1.67, 100"
  })
  void ratingsFollowTheCodesTable(double volts, double amperes, double watts) {
    Voltage voltage = Voltage.volts(volts);
    assertEquals(amperes, classTwo.largestCurrent(voltage).orElseThrow().inAmperes(), 0.005);
    assertEquals(watts, classTwo.largestPower(voltage).orElseThrow().inWatts(), 1e-9);
  }

  @Test
  void classTwoEndsAbove60Volts() {
    assertEquals(Optional.empty(), classTwo.largestCurrent(Voltage.volts(60.1)));
    assertEquals(Optional.empty(), classTwo.largestPower(Voltage.volts(60.1)));
  }

  @Test
  void noVoltageIsRefused() {
    Voltage none = Voltage.volts(0);
    assertThrows(IllegalArgumentException.class, () -> classTwo.largestCurrent(none));
  }

  @Test
  void wetContactAllowsThirtyVoltsOfDirectCurrent() {
    assertEquals(30, classTwo.wetContact().inVolts()); // NEC chapter 9, note 4 to table 11(B)
    assertTrue(classTwo.wetContactSource().citation().contains("note"));
    assertTrue(classTwo.source().citation().contains("11(B)"));
  }

  @Property
  void powerAndCurrentNeverExceedEachOther(@ForAll @DoubleRange(min = 0.1, max = 60) double volts) {
    Voltage voltage = Voltage.volts(volts);
    double amperes = classTwo.largestCurrent(voltage).orElseThrow().inAmperes();
    double watts = classTwo.largestPower(voltage).orElseThrow().inWatts();
    assertEquals(watts, volts * amperes, 1e-9);
    assertTrue(watts <= 100 + 1e-9 && amperes <= 5 + 1e-9);
  }
}
