package wallbook.assess.coax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wallbook.Jobs;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.record.CoaxSeries;

/** Attenuation and impedance against published figures; the source stands beside each. */
class CoaxCheckValuesTest {
  private static final CoaxCables CABLES = new CoaxCables(Jobs.TABLES);
  private static final CoaxSplitters SPLITTERS = new CoaxSplitters(Jobs.TABLES);

  @ParameterizedTest(name = "series 6 at {0} MHz: {1} dB/100 ft within {2} %")
  @CsvSource({
    // An antenna maker's article, typical series 6, middle of each channel; ours is a largest value
    "57, 1.5, 9", // channel 2, 54–60 MHz; the table's 5 and 55 MHz rows differ between editions
    "213, 3.0, 3", // channel 13, 210–216 MHz
    "473, 4.5, 3", // channel 14, 470–476 MHz
    "695, 5.6, 3", // channel 51, 692–698 MHz
    "950, 6.4, 3", // satellite intermediate frequency
    "2150, 9.7, 3", // the same, top
    // As other editions print it, one step from the standard's row at 865 MHz
    "870, 6.11, 0.2",
    // A calculator page: about 1.5 at 50 MHz, 6.5 at 1 GHz
    "50, 1.5, 5",
    "1000, 6.5, 1"
  })
  void seriesSixAgreesWithTypicalPublishedValues(
      double megahertz, double published, double percent) {
    assertEquals(
        published, perHundredFeet(CoaxSeries.SERIES_6, megahertz), published * percent / 100);
  }

  @ParameterizedTest(name = "{0} at {1} MHz: {2} dB/100 m")
  @CsvSource({
    // ANSI/SCTE 74 figures in dB/100 ft, divided by 0.3048
    "SERIES_6, 5, 1.90",
    "SERIES_6, 55, 5.25",
    "SERIES_6, 550, 16.08",
    "SERIES_6, 1000, 21.49",
    "SERIES_59, 211, 12.47",
    "SERIES_59, 1000, 26.64",
    "SERIES_11, 400, 8.53",
    "SERIES_11, 1000, 14.27",
    "LOW_LOSS_50_OHM_405, 900, 12.80",
    "LOW_LOSS_50_OHM_405, 5800, 35.43"
  })
  void rowsOfTheTablesReadInMetres(CoaxSeries series, double megahertz, double per100Metres) {
    assertEquals(per100Metres, attenuation(series, megahertz).inDecibelsPerHundredMetres(), 0.0051);
  }

  @ParameterizedTest(name = "50 ohm, 0.405 in, at {0} MHz: {1} dB/100 ft")
  @CsvSource({"30, 0.68", "150, 1.58"}) // the ARRL's table of coaxial cable
  void theFiftyOhmLawAgreesWithTheArrl(double megahertz, double published) {
    LinearAttenuation law =
        CABLES
            .of(CoaxSeries.LOW_LOSS_50_OHM_405)
            .law()
            .attenuation(Frequency.megahertz(megahertz))
            .orElseThrow();

    assertEquals(published, law.inDecibelsPerHundredFeet(), published * 0.04);
    assertEquals(
        published,
        perHundredFeet(CoaxSeries.LOW_LOSS_50_OHM_405, megahertz),
        published * 0.06); // the table's rows are rounded to a tenth
  }

  @ParameterizedTest(name = "50 ohm, 0.405 in, at {0} MHz: {1} dB/100 ft")
  @CsvSource({
    // The usual two-constant form for this size, 0.122290·√f + 0.000260·f (from memory)
    "900, 3.90",
    "2000, 5.99",
    "5800, 10.82"
  })
  void theFiftyOhmTableAgreesWithTheUsualTwoConstants(double megahertz, double published) {
    assertEquals(
        published, perHundredFeet(CoaxSeries.LOW_LOSS_50_OHM_405, megahertz), published * 0.01);
  }

  @ParameterizedTest(name = "50 ohm, 0.405 in, at {0} MHz: {1} dB/100 ft")
  @CsvSource({
    // Arithmetic of the law, 0.1237654·√f + 0.0002303·f
    "617, 3.22",
    "700, 3.44",
    "850, 3.80",
    "1700, 5.49",
    "1900, 5.83",
    "2100, 6.16",
    "2500, 6.76",
    "3700, 8.38"
  })
  void theFiftyOhmLawAtCellularBands(double megahertz, double expected) {
    assertEquals(
        expected, law(CoaxSeries.LOW_LOSS_50_OHM_405, megahertz).inDecibelsPerHundredFeet(), 0.006);
  }

  @Test
  void fortyFeetOfTheFiftyOhmCableLoseTwoAndAThirdDecibelsAt1900Megahertz() {
    // 0.4 · 5.83 = 2.33
    assertEquals(
        2.33, law(CoaxSeries.LOW_LOSS_50_OHM_405, 1900).over(Length.feet(40)).inDecibels(), 0.005);
  }

  @Test
  void theLawOfSeriesSixAt700Megahertz() {
    // 0.16766 + 0.19044·26.458 + 0.000398·700 = 5.485 dB/100 ft, 18.0 dB/100 m
    assertEquals(5.485, law(CoaxSeries.SERIES_6, 700).inDecibelsPerHundredFeet(), 0.005);
    assertEquals(18.0, law(CoaxSeries.SERIES_6, 700).inDecibelsPerHundredMetres(), 0.05);
  }

  @Test
  void seventyFiveFeetOfSeriesSixWithAndWithoutSplitters() {
    // 0.75 · 6.55 = 4.91; nominal splitters add 3.5 and 7.0
    Decibels cable = attenuation(CoaxSeries.SERIES_6, 1000).over(Length.feet(75));

    assertEquals(4.91, cable.inDecibels(), 0.005);
    assertEquals(8.41, cable.plus(nominal(2)).inDecibels(), 0.005);
    assertEquals(11.91, cable.plus(nominal(4)).inDecibels(), 0.005);
  }

  @Test
  void solidCableOfTheSameSizeIsLossier() {
    // The ARRL's table: 4.11 for solid series 59 at 150 MHz, against about 3.2 for foam; 2.53 for
    // solid 0.405 in, against 1.58 for low-loss
    CoaxCable.Point solid59 = CABLES.lookAlike(CoaxSeries.SERIES_59).orElseThrow();
    CoaxCable.Point solid50 = CABLES.lookAlike(CoaxSeries.LOW_LOSS_50_OHM_405).orElseThrow();

    assertEquals(150, solid59.frequency().inMegahertz(), 1e-9);
    assertEquals(4.11, solid59.attenuation().inDecibelsPerHundredFeet(), 1e-9);
    assertEquals(2.53, solid50.attenuation().inDecibelsPerHundredFeet(), 1e-9);
    assertEquals(3.2, perHundredFeet(CoaxSeries.SERIES_59, 150), 0.1);
    assertTrue(CABLES.lookAlike(CoaxSeries.SERIES_6).isEmpty());
  }

  /**
   * The laws are the relative least-squares fits of the tables, found again by an independent
   * library: minimise the sum of ((c + a·√f + b·f − y) / y)².
   */
  @ParameterizedTest
  @EnumSource(CoaxSeries.class)
  void theLawIsTheLeastSquaresFitOfTheTable(CoaxSeries series) {
    CoaxCable cable = CABLES.of(series);
    boolean constant = cable.law().constant().inDecibelsPerMetre() != 0;
    List<CoaxCable.Point> fitted =
        cable.points().stream()
            .filter(point -> cable.law().attenuation(point.frequency()).isPresent())
            .toList();
    double[][] x = new double[fitted.size()][];
    double[] ones = new double[fitted.size()];
    for (int i = 0; i < x.length; i++) {
      double f = fitted.get(i).frequency().inMegahertz();
      double y = fitted.get(i).attenuation().inDecibelsPerHundredFeet();
      x[i] =
          constant
              ? new double[] {Math.sqrt(f) / y, f / y, 1 / y}
              : new double[] {Math.sqrt(f) / y, f / y};
      ones[i] = 1;
    }
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    regression.setNoIntercept(true);
    regression.newSampleData(ones, x);
    double[] terms = regression.estimateRegressionParameters();

    assertEquals(terms[0], cable.law().perRoot().inDecibelsPerHundredFeet(), 1e-6);
    assertEquals(terms[1], cable.law().perMegahertz().inDecibelsPerHundredFeet(), 1e-6);
    assertEquals(constant ? terms[2] : 0, cable.law().constant().inDecibelsPerHundredFeet(), 1e-6);
  }

  @ParameterizedTest
  @EnumSource(CoaxSeries.class)
  void theResidualStatedIsTheLargest(CoaxSeries series) {
    CoaxCable cable = CABLES.of(series);
    double largest = 0;
    for (CoaxCable.Point point : cable.points()) {
      if (cable.law().attenuation(point.frequency()).isPresent()) {
        LinearAttenuation residual =
            law(series, point.frequency().inMegahertz()).minus(point.attenuation());
        largest = Math.max(largest, Math.abs(residual.inDecibelsPerHundredFeet()));
      }
    }

    assertEquals(largest, cable.law().residual().inDecibelsPerHundredFeet(), 0.0051);
  }

  @ParameterizedTest(name = "{0}: known at {1} MHz, not at {2}")
  @CsvSource({
    "SERIES_6, 3000, 3000.1",
    "SERIES_6, 5, 4.9",
    "SERIES_59, 1002, 1002.1",
    "SERIES_11, 1002, 1002.1",
    "LOW_LOSS_50_OHM_405, 5800, 5800.1",
    "LOW_LOSS_50_OHM_405, 30, 29.9"
  })
  void outsideItsRangeTheAttenuationIsNotStated(CoaxSeries series, double within, double outside) {
    CoaxCable cable = CABLES.of(series);

    assertTrue(cable.attenuation(Frequency.megahertz(within), cable.reference()).isPresent());
    assertTrue(cable.attenuation(Frequency.megahertz(outside), cable.reference()).isEmpty());
  }

  @ParameterizedTest(name = "law of {0}: known at {1} MHz, not at {2}")
  @CsvSource({
    "SERIES_6, 3000, 3000.1",
    "SERIES_6, 55, 54.9",
    "SERIES_59, 55, 54.9",
    "SERIES_11, 1000, 1000.1"
  })
  void outsideItsFitTheLawIsNotUsed(CoaxSeries series, double within, double outside) {
    CoaxLaw law = CABLES.of(series).law();

    assertTrue(law.attenuation(Frequency.megahertz(within)).isPresent());
    assertTrue(law.attenuation(Frequency.megahertz(outside)).isEmpty());
  }

  @Test
  void theBandEdgeOf1002MegahertzContinuesTheLastSegment() {
    // slope of series 59 from 865 to 1000: (8.12 − 7.52)/(√1000 − √865) = 0.27127 per √MHz;
    // 8.12 + 0.27127·(√1002 − √1000) = 8.1286
    assertEquals(8.1286, perHundredFeet(CoaxSeries.SERIES_59, 1002), 0.0001);
  }

  @Test
  void betweenRowsTheTableIsReadOverTheRootOfFrequency() {
    // halfway in √f between 250 and 270 MHz, f = ((√250 + √270)/2)² = 259.9037: (3.30 + 3.37)/2
    assertEquals(3.335, perHundredFeet(CoaxSeries.SERIES_6, 259.9037), 1e-4);
  }

  @ParameterizedTest(name = "at {0} °C {1} times")
  @CsvSource({"20, 1", "40, 1.04", "0, 0.96"}) // 0.2 % per kelvin, half of copper's 0.393 %
  void attenuationRisesWithTemperature(double celsius, double factor) {
    CoaxCable cable = CABLES.of(CoaxSeries.SERIES_6);
    LinearAttenuation warm =
        cable.attenuation(Frequency.megahertz(1000), Temperature.celsius(celsius)).orElseThrow();

    assertEquals(factor, warm.ratioTo(attenuation(CoaxSeries.SERIES_6, 1000)), 1e-12);
  }

  @Test
  void theFiftyOhmTableHoldsAt25Degrees() {
    CoaxCable cable = CABLES.of(CoaxSeries.LOW_LOSS_50_OHM_405);

    assertEquals(1, cable.temperatureFactor(Temperature.celsius(25)));
    assertEquals(0.99, cable.temperatureFactor(Temperature.celsius(20)), 1e-12);
  }

  @Test
  void seventyFiveMeetsFiftyOhmAtOneAndAHalf() {
    // Γ = 25/125 = 0.2: (1 + 0.2)/(1 − 0.2) = 1.5; −20·log10 0.2 = 13.98; −10·log10 0.96 = 0.177
    ImpedanceStep step = new ImpedanceStep(Resistance.ohms(75), Resistance.ohms(50));
    ImpedanceStep back = new ImpedanceStep(Resistance.ohms(50), Resistance.ohms(75));

    assertTrue(step.isStep());
    assertEquals(1.5, step.standingWaveRatio().value(), 1e-12);
    assertEquals(13.98, step.returnLoss().inDecibels(), 0.005);
    assertEquals(0.177, step.mismatchLoss().inDecibels(), 0.0005);
    assertEquals(step.mismatchLoss(), back.mismatchLoss());
  }

  @Test
  void equalImpedancesMakeNoStep() {
    ImpedanceStep none = new ImpedanceStep(Resistance.ohms(75), Resistance.ohms(75));

    assertFalse(none.isStep());
    assertEquals(1, none.standingWaveRatio().value());
    assertEquals(0, none.mismatchLoss().inDecibels(), 1e-12);
    assertThrows(IllegalStateException.class, none::returnLoss);
    assertThrows(
        IllegalArgumentException.class,
        () -> new ImpedanceStep(Resistance.ohms(0), Resistance.ohms(75)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new ImpedanceStep(Resistance.ohms(75), Resistance.ohms(-1)));
  }

  @ParameterizedTest(name = "{0} ways: {1} dB, not below {2}")
  @CsvSource({"2, 3.5, 3.01", "4, 7.0, 6.02", "8, 11, 9.03"}) // printed on splitters; 10·log10 N
  void splittersLoseMoreThanTheirShare(int ways, double nominal, double ideal) {
    assertEquals(nominal, nominal(ways).inDecibels());
    assertEquals(ideal, 10 * Math.log10(ways), 0.005);
    assertTrue(nominal >= ideal);
    assertTrue(SPLITTERS.nominalLoss(Count.of(5)).isEmpty());
  }

  private static double perHundredFeet(CoaxSeries series, double megahertz) {
    return attenuation(series, megahertz).inDecibelsPerHundredFeet();
  }

  private static LinearAttenuation attenuation(CoaxSeries series, double megahertz) {
    CoaxCable cable = CABLES.of(series);
    return cable.attenuation(Frequency.megahertz(megahertz), cable.reference()).orElseThrow();
  }

  private static LinearAttenuation law(CoaxSeries series, double megahertz) {
    return CABLES.of(series).law().attenuation(Frequency.megahertz(megahertz)).orElseThrow();
  }

  private static Decibels nominal(int ways) {
    return SPLITTERS.nominalLoss(Count.of(ways)).orElseThrow();
  }
}
