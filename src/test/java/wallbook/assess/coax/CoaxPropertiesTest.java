package wallbook.assess.coax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.record.CoaxSeries;

/** What holds for every coaxial cable, whatever its figures. */
class CoaxPropertiesTest {
  private static final CoaxCables CABLES = new CoaxCables(Jobs.TABLES);

  @Property
  void attenuationRisesWithFrequencyAndTemperature(
      @ForAll CoaxSeries series,
      @ForAll @DoubleRange(min = 0, max = 1) double one,
      @ForAll @DoubleRange(min = 0, max = 1) double other,
      @ForAll @DoubleRange(min = -40, max = 60) double celsius) {
    CoaxCable cable = CABLES.of(series);
    Frequency low = within(cable, Math.min(one, other));
    Frequency high = within(cable, Math.max(one, other));
    Temperature cold = Temperature.celsius(celsius);
    Temperature warm = Temperature.celsius(celsius + 1);

    LinearAttenuation atLow = cable.attenuation(low, cold).orElseThrow();
    assertTrue(atLow.inDecibelsPerMetre() > 0);
    assertTrue(cable.attenuation(high, cold).orElseThrow().compareTo(atLow) >= 0);
    assertTrue(cable.attenuation(low, warm).orElseThrow().compareTo(atLow) > 0);
  }

  @Property
  void aThickerCableLosesLess(@ForAll @DoubleRange(min = 5, max = 1002) double megahertz) {
    double thin = perHundredFeet(CoaxSeries.SERIES_59, megahertz);
    double middle = perHundredFeet(CoaxSeries.SERIES_6, megahertz);
    double thick = perHundredFeet(CoaxSeries.SERIES_11, megahertz);

    assertTrue(thin > middle && middle > thick);
  }

  @Property
  void theLawStaysByTheTable(
      @ForAll CoaxSeries series, @ForAll @DoubleRange(min = 55, max = 5800) double megahertz) {
    CoaxCable cable = CABLES.of(series);
    Frequency frequency = Frequency.megahertz(megahertz);
    cable
        .law()
        .attenuation(frequency)
        .filter(law -> cable.covers(frequency))
        .ifPresent(
            law -> {
              // Between rows the law bends where the table runs straight: allow as much again.
              double most = 2 * cable.law().residual().inDecibelsPerHundredFeet();
              double table =
                  cable
                      .attenuation(frequency, cable.reference())
                      .orElseThrow()
                      .inDecibelsPerHundredFeet();
              assertEquals(table, law.inDecibelsPerHundredFeet(), most);
            });
  }

  @Property
  void whatPassesAStepAndWhatReturnsAreTheWhole(
      @ForAll @DoubleRange(min = 1, max = 1000) double one,
      @ForAll @DoubleRange(min = 1, max = 1000) double other) {
    ImpedanceStep step = new ImpedanceStep(Resistance.ohms(one), Resistance.ohms(other));

    assertEquals(
        Math.max(one, other) / Math.min(one, other), step.standingWaveRatio().value(), 1e-6);
    if (step.isStep()) {
      double passes = Math.pow(10, -step.mismatchLoss().inDecibels() / 10);
      double returns = Math.pow(10, -step.returnLoss().inDecibels() / 10);
      assertEquals(1, passes + returns, 1e-9);
    }
  }

  @Property(tries = 60)
  void aLongerRunNeverLosesLess(
      @ForAll @DoubleRange(min = 1, max = 100) double metres,
      @ForAll @DoubleRange(min = 1, max = 3) double factor) {
    List<Assessment> shorter = uses(metres);
    List<Assessment> longer = uses(metres * factor);

    for (int i = 0; i < shorter.size(); i++) {
      assertEquals(shorter.get(i).verdict(), longer.get(i).verdict());
      if (shorter.get(i).value().isPresent()) {
        assertTrue(loss(longer.get(i)).compareTo(loss(shorter.get(i))) >= 0);
      }
    }
  }

  private static List<Assessment> uses(double metres) {
    return CoaxJobs.assess(CoaxJobs.run("series-6", "length: " + metres + " m")).stream()
        .filter(a -> a.topic().startsWith("coax.use."))
        .toList();
  }

  private static Decibels loss(Assessment assessment) {
    return (Decibels) assessment.value().orElseThrow();
  }

  private static Frequency within(CoaxCable cable, double share) {
    double from = cable.from().inMegahertz();
    double to = cable.to().inMegahertz();
    return Frequency.megahertz(Math.min(to, from + share * (to - from)));
  }

  private static double perHundredFeet(CoaxSeries series, double megahertz) {
    CoaxCable cable = CABLES.of(series);
    return cable
        .attenuation(Frequency.megahertz(megahertz), cable.reference())
        .orElseThrow()
        .inDecibelsPerHundredFeet();
  }
}
