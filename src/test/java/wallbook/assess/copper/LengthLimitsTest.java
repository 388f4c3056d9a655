package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.quantity.Length;
import wallbook.quantity.Temperature;
import wallbook.record.LinkConfiguration;
import wallbook.reference.Standing;

class LengthLimitsTest {
  private final LengthLimits limits = new LengthLimits(Jobs.TABLES);

  /** TIA-568-C.2 clause 6.4.7 as quoted: 0.4 %/°C to 40 °C, 0.6 to 60 °C; screened 0.2. */
  @ParameterizedTest
  @CsvSource({
    "20, false, 1.00",
    "30, false, 1.04",
    "40, false, 1.08",
    "50, false, 1.14",
    "60, false, 1.20",
    "40, true, 1.04",
    "60, true, 1.08",
    "-10, false, 1.00",
    "19, true, 1.00"
  })
  void lossRisesWithTemperatureAsTheStandardSays(double celsius, boolean screened, double k) {
    assertEquals(k, limits.lossFactor(Temperature.celsius(celsius), screened).orElseThrow(), 1e-9);
  }

  @Test
  void nothingIsPublishedAbove60Celsius() {
    assertTrue(limits.lossFactor(Temperature.celsius(60.1), false).isEmpty());
    assertTrue(limits.link(Temperature.celsius(60.1), false).isEmpty());
    assertTrue(limits.link(Temperature.celsius(60), false).isPresent());
    assertTrue(limits.link(Temperature.celsius(60.1), true).isEmpty());
  }

  /**
   * 90 m at 20 °C: handbooks; 84 m at 40 °C: a test vendor's page; the others weak, from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 90.0",
    "25, 89.0",
    "30, 87.0",
    "35, 85.5",
    "40, 84.0",
    "45, 81.7",
    "50, 79.5",
    "55, 77.2",
    "60, 75.0"
  })
  void unscreenedLengthAgreesWithThePublishedTable(double celsius, double metres) {
    assertEquals(
        metres,
        limits.link(Temperature.celsius(celsius), false).orElseThrow().length().inMetres(),
        1e-9);
  }

  @Test
  void theFormulaStandsBesideTheTableAndDiffers() {
    // 90 m / 1.08 = 83.33 m against 84 m in the table
    assertEquals(
        83.33,
        limits.computed(Temperature.celsius(40), false).orElseThrow().length().inMetres(),
        0.005);
  }

  @Test
  void betweenTwoRowsTheHotterOneHolds() {
    assertEquals(
        Length.metres(84.0), limits.link(Temperature.celsius(35.1), false).orElseThrow().length());
  }

  @Test
  void coldGivesNoCredit() {
    assertEquals(
        Length.metres(90.0), limits.link(Temperature.celsius(-20), false).orElseThrow().length());
  }

  @Test
  void screenedCableIsComputedForWantOfATable() {
    // 90 m / 1.04 = 86.54 m
    assertEquals(
        86.54, limits.link(Temperature.celsius(40), true).orElseThrow().length().inMetres(), 0.005);
  }

  @Test
  void rowsKeepTheirStanding() {
    assertEquals(
        Standing.CONFIRMED,
        limits.link(Temperature.celsius(40), false).orElseThrow().source().standing());
    assertEquals(
        Standing.FROM_MEMORY,
        limits.link(Temperature.celsius(45), false).orElseThrow().source().standing());
  }

  @ParameterizedTest
  @CsvSource({"84.0, 40", "84.01, 35", "75, 60", "90, 20", "10, 60"})
  void theHottestTemperatureIsTheLastRowThatHolds(double metres, double celsius) {
    assertEquals(
        Optional.of(Temperature.celsius(celsius)), limits.hottest(Length.metres(metres), false));
  }

  @Test
  void aRunLongerThan90MetresHoldsAtNoTemperature() {
    assertTrue(limits.hottest(Length.metres(90.01), false).isEmpty());
  }

  @Test
  void cordsAreWhatTheChannelHasBeyondTheLink() {
    assertEquals(10, limits.cords().inMetres(), 1e-9); // 100 m − 90 m, handbooks
    assertEquals(Length.metres(100), limits.at20(LinkConfiguration.CHANNEL).length());
  }

  @Property
  void hotterNeverReachesFurther(
      @ForAll @DoubleRange(min = -40, max = 59) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double more,
      @ForAll boolean screened) {
    Length cool = limits.link(Temperature.celsius(celsius), screened).orElseThrow().length();
    Length hot = limits.link(Temperature.celsius(celsius + more), screened).orElseThrow().length();
    assertTrue(hot.compareTo(cool) <= 0);
  }

  @Property
  void theTableNeverFallsShortOfTheFormula(
      @ForAll @DoubleRange(min = 20, max = 60) double celsius) {
    // between rows the hotter row may be shorter than the formula at the cooler temperature
    double row = Math.ceil(celsius / 5) * 5;
    Temperature at = Temperature.celsius(row);
    assertTrue(
        limits
                .link(at, false)
                .orElseThrow()
                .length()
                .compareTo(limits.computed(at, false).orElseThrow().length())
            >= 0);
  }
}
