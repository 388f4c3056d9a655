package wallbook.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.DataRate;
import wallbook.quantity.Frequency;
import wallbook.quantity.Quantity;
import wallbook.quantity.Wavelength;

class RatesAndFrequenciesTest {
  @ParameterizedTest
  @CsvSource({"31.25, 31.25 MHz", "5, 5 MHz", "0.064, 0.06 MHz", "470.5, 471 MHz"})
  void frequenciesKeepTheDecimalsTheyHave(double megahertz, String printed) {
    assertEquals(printed, print(Frequency.megahertz(megahertz)));
  }

  @ParameterizedTest
  @CsvSource({"2.5, 2.5 Gb/s", "10, 10 Gb/s", "0.1, 100 Mb/s"})
  void ratesKeepTheDecimalTheyHave(double gigabits, String printed) {
    assertEquals(printed, print(DataRate.gigabitsPerSecond(gigabits)));
  }

  @ParameterizedTest
  @CsvSource({"850, 850 nm", "1310, 1310 nm"})
  void wavelengthsAreNotGrouped(double nanometres, String printed) {
    assertEquals(printed, print(Wavelength.nanometres(nanometres)));
  }

  private static String print(Quantity quantity) {
    return new QuantityPrinter(Locale.US, UnitSystem.METRIC).print(quantity).replace('\u00a0', ' ');
  }
}
