package wallbook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.QuantityParser.NotAQuantity;
import wallbook.quantity.QuantityParser.Reason;

/**
 * Conversions by definition: foot 0.3048 m, inch 25.4 mm, pound-force 4.4482216 N, pound 0.45359237
 * kg (international yard and pound agreement 1959; CGPM 1901 for the standard acceleration).
 */
class QuantityParserTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "118 ft | 35.9664",
        "118ft | 35.9664",
        "1,200 ft | 365.76",
        "35.9 m | 35.9",
        "74 in | 1.8796",
        "1880 mm | 1.88",
        "188 cm | 1.88",
        "0.5 km | 500",
        "6' | 1.8288",
        "6\" | 0.1524",
        "6 ft 2 in | 1.8796",
        "6ft2in | 1.8796",
        "6' 2\" | 1.8796",
        "6 ft 2.5 in | 1.8923",
        "6 ft 2 1/2 in | 1.8923",
        "6 ft 2-1/2 in | 1.8923",
        "6 ft 1/2 in | 1.8415",
        "0 ft 6 in | 0.1524",
        "-1 ft 6 in | -0.4572",
        "1/2 in | 0.0127",
        "1-1/2 in | 0.0381",
        "1 1/2 in | 0.0381",
        "3/4\" | 0.01905",
        "-3/4 in | -0.01905",
        "+3 m | 3",
        "  3 m  | 3"
      })
  void readsLengthsAsTheyAreWrittenOnSite(String text, double metres) throws NotAQuantity {
    assertEquals(metres, QuantityParser.parse(Length.class, text).inMetres(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "NO_NUMBER | ft",
        "NO_NUMBER | about 6 ft",
        "NO_NUMBER | .5 ft",
        "NO_NUMBER | six feet",
        "NO_UNIT | 118",
        "NO_UNIT | 1,200",
        "UNKNOWN_UNIT | 118 yd",
        "UNKNOWN_UNIT | 118 FT",
        "UNKNOWN_UNIT | 6 ft in",
        "UNKNOWN_UNIT | 6 ft 2",
        "UNKNOWN_UNIT | 35,9 m",
        "UNKNOWN_UNIT | 6 ft 2 in 3",
        "IMPOSSIBLE | 1/0 in",
        "IMPOSSIBLE | 11/2 in",
        "IMPOSSIBLE | 6 ft 21/2 in",
        "IMPOSSIBLE | 6 ft 1/0 in"
      })
  void saysWhatIsTheMatter(Reason reason, String text) {
    NotAQuantity refused =
        assertThrows(NotAQuantity.class, () -> QuantityParser.parse(Length.class, text));
    assertEquals(reason, refused.reason());
    assertEquals(QuantityParser.unitsOf(Length.class), refused.units());
  }

  @Test
  void proposesTheTwoMostUsualUnitsForABareNumber() {
    NotAQuantity refused =
        assertThrows(NotAQuantity.class, () -> QuantityParser.parse(Length.class, "118"));
    assertEquals("118 ft / 118 m", refused.proposal());
  }

  @Test
  void readsEveryKindOfQuantity() throws NotAQuantity {
    assertEquals(4200 * 0.09290304, parse(Area.class, "4200 sq ft").inSquareMetres(), 1e-9);
    assertEquals(1e-6, parse(Area.class, "1 mm²").inSquareMetres(), 1e-15);
    assertEquals(645.16, parse(Area.class, "1 sq in").inSquareMillimetres(), 1e-9);
    assertEquals(90, parse(Angle.class, "90 deg").inDegrees(), 1e-12);
    assertEquals(8, parse(Resistance.class, "8 ohm").inOhms(), 1e-12);
    assertEquals(4700, parse(Resistance.class, "4.7 kΩ").inOhms(), 1e-9);
    assertEquals(-1.5, parse(Decibels.class, "-1.5 dB").inDecibels(), 1e-12);
    assertEquals(-7.3, parse(PowerLevel.class, "-7.3 dBm").inDbm(), 1e-12);
    assertEquals(0.25, parse(Power.class, "250 mW").inWatts(), 1e-12);
    assertEquals(70.7, parse(Voltage.class, "70.7 V").inVolts(), 1e-12);
    assertEquals(0.15, parse(Current.class, "150 mA").inAmperes(), 1e-12);
    // TIA-568 pulls at most 110 N, which its tables print as 25 lbf: 25 × 4.4482216 = 111.2055 N.
    assertEquals(111.2055, parse(Force.class, "25 lbf").inNewtons(), 1e-3);
    // 26 lb × 0.45359237 kg over 0.3048 km = 38.692 kg/km.
    assertEquals(38.692, parse(LinearMass.class, "26 lb/1000 ft").inKilogramsPerKilometre(), 1e-3);
    assertEquals(0.0015, parse(Frequency.class, "1.5 kHz").inMegahertz(), 1e-12);
    assertEquals(2500, parse(Frequency.class, "2.5 GHz").inMegahertz(), 1e-9);
    assertEquals(555, parse(Delay.class, "555 ns").inNanoseconds(), 1e-9);
    assertEquals(0.4, parse(Ratio.class, "40 %").inFraction(), 1e-12);
    assertEquals(850, parse(Wavelength.class, "850 nm").inNanometres(), 1e-9);
    assertEquals(2500, parse(DataRate.class, "2.5 Gb/s").inMegabitsPerSecond(), 1e-9);
    assertEquals(40, parse(Temperature.class, "104 °F").inCelsius(), 1e-9);
    assertEquals(
        20.35 / 0.3048,
        parse(LinearResistance.class, "20.35 ohm/1000 ft").inOhmsPerKilometre(),
        1e-6);
    assertEquals(14.5939, parse(LinearForce.class, "1 lbf/ft").inNewtonsPerMetre(), 1e-3);
    assertEquals(
        65.617, parse(LinearAttenuation.class, "2 dB/100 ft").inDecibelsPerKilometre(), 1e-3);
    assertEquals(6.35, parse(Diameter.class, "0.25 in").inMillimetres(), 1e-9);
  }

  @Test
  void refusesWhatIsColderThanAbsoluteZero() {
    assertEquals(
        Reason.IMPOSSIBLE,
        assertThrows(NotAQuantity.class, () -> parse(Temperature.class, "-274 °C")).reason());
  }

  @Property
  void feetAndInchesAddUp(@ForAll @IntRange(max = 500) int feet, @ForAll @IntRange(max = 11) int in)
      throws NotAQuantity {
    assertEquals(
        (feet * 12 + in) * 0.0254,
        QuantityParser.parse(Length.class, feet + " ft " + in + " in").inMetres(),
        1e-9);
  }

  @Property
  void aLengthComesBackFromWhatItWasWrittenAs(
      @ForAll @DoubleRange(min = -5000, max = 5000) double number,
      @ForAll("lengthUnits") String unit)
      throws NotAQuantity {
    String written = String.format(Locale.ROOT, "%.4f", number);
    Length read = QuantityParser.parse(Length.class, written + " " + unit);
    double back =
        switch (unit) {
          case "ft", "'" -> read.inFeet();
          case "in", "\"" -> read.inInches();
          case "mm" -> read.inMillimetres();
          case "cm" -> read.inMillimetres() / 10;
          case "km" -> read.inKilometres();
          default -> read.inMetres();
        };
    assertEquals(Double.parseDouble(written), back, 1e-6);
  }

  @Property
  void thePatternTakesExactlyWhatIsRead(@ForAll("lengthTexts") String text) {
    boolean read;
    try {
      QuantityParser.parse(Length.class, text);
      read = true;
    } catch (NotAQuantity e) {
      read = e.reason() == Reason.IMPOSSIBLE;
    }
    assertEquals(read, text.matches(QuantityParser.patternOf(Length.class)), text);
  }

  @Property
  void everyUnitOfEveryTypeIsReadAndMatchesThePattern(
      @ForAll("types") Class<? extends Quantity> type, @ForAll @IntRange(max = 200) int number)
      throws NotAQuantity {
    for (String unit : QuantityParser.unitsOf(type)) {
      String text = number + " " + unit;
      QuantityParser.parse(type, text);
      assertTrue(text.matches(QuantityParser.patternOf(type)), text);
    }
  }

  private static <Q extends Quantity> Q parse(Class<Q> type, String text) throws NotAQuantity {
    return QuantityParser.parse(type, text);
  }

  @Provide
  Arbitrary<String> lengthUnits() {
    return Arbitraries.of(QuantityParser.unitsOf(Length.class));
  }

  /** Pieces of lengths in any order: most are nonsense, many are read. */
  @Provide
  Arbitrary<String> lengthTexts() {
    return Arbitraries.of(
            "6", "12", "0", "1/2", "3/4", "ft", "in", "'", "\"", "m", "mm", "-", " ", ".5", ",",
            "/", "1,200")
        .list()
        .ofMinSize(1)
        .ofMaxSize(7)
        .map(pieces -> String.join("", pieces))
        .filter(text -> text.equals(text.strip()) && !text.isEmpty());
  }

  @Provide
  Arbitrary<Class<? extends Quantity>> types() {
    return Arbitraries.of(
        List.<Class<? extends Quantity>>of(
            Angle.class,
            Area.class,
            Current.class,
            DataRate.class,
            Decibels.class,
            Delay.class,
            Diameter.class,
            Force.class,
            Frequency.class,
            Length.class,
            LinearAttenuation.class,
            LinearForce.class,
            LinearMass.class,
            LinearResistance.class,
            Power.class,
            PowerLevel.class,
            Ratio.class,
            Resistance.class,
            Temperature.class,
            Voltage.class,
            Wavelength.class));
  }
}
