package wallbook.assess.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.assess.conductor.CopperConductors;
import wallbook.quantity.Temperature;

/**
 * NEC chapter 9 table 8, uncoated copper at 75 °C: a table that the constants of the conductors do
 * not come from.
 */
class ConductorTableTest {
  private static final Temperature AT_75 = Temperature.celsius(75);

  private final CopperConductors copper = new CopperConductors(Jobs.TABLES);

  @ParameterizedTest
  @CsvSource({
    // awg, area mm², solid Ω/kft, stranded Ω/kft, solid Ω/km, stranded Ω/km
    "18, 0.823, 7.77, 7.95, 25.5, 26.1",
    "16, 1.31, 4.89, 4.99, 16.0, 16.4",
    "14, 2.08, 3.07, 3.14, 10.1, 10.3",
    "12, 3.31, 1.93, 1.98, 6.34, 6.50",
    "10, 5.261, 1.21, 1.24, 3.984, 4.070" // per km from memory
  })
  void conductorsAgreeWithTheElectricalCode(
      int awg,
      double area,
      double solidKft,
      double strandedKft,
      double solidKm,
      double strandedKm) {
    assertEquals(area, copper.solid(awg).area().inSquareMillimetres(), area * 0.002);
    double solid = copper.solid(awg).resistanceAt(AT_75).inOhmsPerThousandFeet();
    double stranded = copper.stranded(awg).resistanceAt(AT_75).inOhmsPerThousandFeet();
    assertEquals(solidKft, solid, solidKft * 0.005); // three figures printed
    assertEquals(
        strandedKft, stranded, strandedKft * 0.006); // the table's strands add 2.0 to 2.6 %
    assertEquals(solidKm, solid / 0.3048, solidKm * 0.005);
    assertEquals(strandedKm, stranded / 0.3048, strandedKm * 0.006);
  }
}
