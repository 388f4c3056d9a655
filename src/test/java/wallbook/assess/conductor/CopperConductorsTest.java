package wallbook.assess.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.quantity.Length;
import wallbook.quantity.Temperature;
import wallbook.reference.Standing;
import wallbook.reference.Tables;

class CopperConductorsTest {
  private static final Temperature AT_20 = Temperature.celsius(20);
  private static final Temperature AT_75 = Temperature.celsius(75);

  private final CopperConductors conductors = new CopperConductors(new Tables());

  /** Floyd, Electric Circuit Fundamentals, 2nd edition, table of American wire gauges. */
  @ParameterizedTest
  @CsvSource({
    // awg, Ω per 1000 ft at 20 °C, tolerance: one unit of the printed last digit
    "-3, 0.049, 0.001",
    "0, 0.0983, 0.0001",
    "10, 0.9989, 0.001",
    "12, 1.588, 0.001",
    "14, 2.525, 0.002",
    "16, 4.016, 0.002",
    "18, 6.385, 0.002",
    "20, 10.15, 0.01",
    "22, 16.14, 0.01",
    "23, 20.36, 0.01",
    "24, 25.67, 0.01",
    "25, 32.37, 0.01",
    "26, 40.81, 0.02",
    "28, 64.90, 0.02",
    "30, 103.2, 0.1",
    "40, 1049, 1"
  })
  void resistanceAt20CelsiusAgreesWithTheHandbookTable(int awg, double expected, double tolerance) {
    assertEquals(
        expected,
        conductors.solid(awg).resistanceAt(AT_20).inOhmsPerThousandFeet(),
        tolerance,
        "AWG " + awg);
  }

  /** Diameters in inches, the same table of Floyd. */
  @ParameterizedTest
  @CsvSource({
    "-3, 0.4600", "10, 0.10189", "12, 0.08081", "14, 0.06408", "16, 0.05082", "18, 0.0403",
    "20, 0.03196", "22, 0.02535", "23, 0.02257", "24, 0.0201", "26, 0.01594", "36, 0.005"
  })
  void diameterAgreesWithTheHandbookTable(int awg, double inches) {
    assertEquals(inches, conductors.solid(awg).diameter().inInches(), 0.00002); // last digit ± 1
  }

  /** Circular mils of the same table; 1 circular mil is π/4 of a square mil. */
  @ParameterizedTest
  @CsvSource({"10, 10381", "12, 6529", "14, 4106.8", "18, 1624.3", "23, 509.45", "24, 404.01"})
  void areaAgreesWithTheHandbookTable(int awg, double circularMils) {
    double computed = conductors.solid(awg).area().inSquareInches() * 1e6 * 4 / Math.PI;
    assertEquals(circularMils, computed, circularMils * 0.0002);
  }

  /** NEC chapter 9 table 8, solid uncoated copper at 75 °C, Ω per 1000 ft. */
  @ParameterizedTest
  @CsvSource({"18, 7.77", "16, 4.89", "14, 3.07", "12, 1.93", "10, 1.21"})
  void resistanceAt75CelsiusAgreesWithTheElectricalCode(int awg, double expected) {
    assertEquals(
        expected,
        conductors.solid(awg).resistanceAt(AT_75).inOhmsPerThousandFeet(),
        0.011); // 4.88 computed against 4.89 printed
  }

  @Test
  void strandedConductorAgreesWithTheElectricalCode() {
    assertEquals(
        7.95, // NEC chapter 9 table 8, 18 AWG stranded (7 strands) at 75 °C
        conductors.stranded(18).resistanceAt(AT_75).inOhmsPerThousandFeet(),
        0.04);
  }

  @Test
  void strandedFactorIsMarkedAsMemory() {
    assertEquals(Standing.CONFIRMED, conductors.source().standing());
    assertEquals(Standing.FROM_MEMORY, conductors.strandedSource().standing());
  }

  @Test
  void loopCountsBothConductors() {
    // 90 m of 24 AWG: 2 · 90 m · 84.21 Ω/km = 15.16 Ω (resistance from Floyd's 25.67 Ω/1000 ft)
    assertEquals(
        2 * 90 * 25.67 / 304.8,
        conductors.solid(24).loopOver(Length.metres(90), AT_20).inOhms(),
        0.01);
  }

  @ParameterizedTest
  @ValueSource(ints = {-4, 57})
  void gaugeOutsideTheStandardIsRefused(int awg) {
    assertThrows(IllegalArgumentException.class, () -> conductors.solid(awg));
  }

  @ParameterizedTest
  @ValueSource(ints = {-3, 56})
  void gaugeAtTheEndsOfTheStandardIsTaken(int awg) {
    assertTrue(conductors.solid(awg).area().inSquareMillimetres() > 0);
  }

  @Property
  void threeGaugesHalveTheAreaAlmost(@ForAll @IntRange(min = -3, max = 53) int awg) {
    double ratio = conductors.solid(awg).area().ratioTo(conductors.solid(awg + 3).area());
    assertEquals(2.005, ratio, 0.001); // 92^(6/39)
  }

  @Property
  void hotterCopperResistsMore(
      @ForAll @IntRange(min = 0, max = 30) int awg,
      @ForAll @IntRange(min = -40, max = 99) int celsius) {
    CopperConductor conductor = conductors.solid(awg);
    assertTrue(
        conductor
                .resistanceAt(Temperature.celsius(celsius))
                .compareTo(conductor.resistanceAt(Temperature.celsius(celsius + 1)))
            < 0);
  }
}
