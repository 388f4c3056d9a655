package wallbook.assess.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.conductor.CopperConductor;
import wallbook.assess.conductor.CopperConductors;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.reference.Tables;

class SpeakerLineTest {
  private static final Temperature AT_20 = Temperature.celsius(20);

  private final CopperConductors conductors = new CopperConductors(new Tables());

  private SpeakerLine solidLine(int awg, double feet, double ohms) {
    return line(conductors.solid(awg), feet, ohms);
  }

  private static SpeakerLine line(CopperConductor conductor, double feet, double ohms) {
    return new SpeakerLine(Resistance.ohms(ohms), conductor.loopOver(Length.feet(feet), AT_20));
  }

  /** Loop of 100 ft as an audio amplifier's manual prints it; 1.277 by a posting of 1983. */
  @ParameterizedTest
  @CsvSource({
    // awg, Ω, tolerance: a unit of the printed last digit
    "24, 5.1, 0.1",
    "22, 3.24, 0.02",
    "20, 2.0, 0.05",
    "18, 1.28, 0.01",
    "16, 0.8, 0.01",
    "14, 0.5, 0.01",
    "12, 0.32, 0.01",
    "18, 1.277, 0.001"
  })
  void loopOfAHundredFeetAgreesWithThePublishedTable(int awg, double ohms, double tolerance) {
    assertEquals(ohms, solidLine(awg, 100, 8).loop().inOhms(), tolerance);
  }

  /** Loop per foot of stranded wire, a second amplifier's manual. */
  @ParameterizedTest
  @CsvSource({"18, 0.01302", "16, 0.00819", "14, 0.00515", "12, 0.00324", "10, 0.00204"})
  void strandedLoopAgreesWithTheAmplifiersManual(int awg, double ohmsPerFoot) {
    double loop = line(conductors.stranded(awg), 1, 8).loop().inOhms();
    assertEquals(ohmsPerFoot, loop, ohmsPerFoot * 0.003); // printed to three figures
  }

  /** Loss of 100 ft at 4, 8 and 16 Ω, a professional audio maker's table (15 cells). */
  @ParameterizedTest
  @CsvSource({
    "10, 4, 0.44", "10, 8, 0.22", "10, 16, 0.11",
    "12, 4, 0.69", "12, 8, 0.35", "12, 16, 0.18",
    "14, 4, 1.07", "14, 8, 0.55", "14, 16, 0.28",
    "16, 4, 1.65", "16, 8, 0.86", "16, 16, 0.44",
    "18, 4, 2.49", "18, 8, 1.33", "18, 16, 0.69"
  })
  void lossOfAHundredFeetAgreesWithThePublishedTable(int awg, double ohms, double decibels) {
    double computed = line(conductors.stranded(awg), 100, ohms).loss().inDecibels();
    // Two figures are printed; the maker's wire is not named, so 5 % or a unit of the last digit.
    assertEquals(decibels, computed, Math.max(0.05 * decibels, 0.01));
  }

  /** Oracles by 20·log10((Z + R)/Z) from ASTM B258 and IACS copper at 20 °C. */
  @ParameterizedTest
  @CsvSource({
    "16, 100, 4, 1.589", // R 0.8031 Ω: 20·log10(4.8031/4)
    "16, 100, 8, 0.831", // 20·log10(8.8031/8)
    "16, 100, 16, 0.425",
    "18, 100, 4, 2.407", // R 1.2770 Ω
    "18, 100, 8, 1.286",
    "18, 100, 16, 0.667",
    "16, 75, 4, 1.218", // R 0.6023 Ω, two 8 Ω speakers on one pair
    "16, 75, 8, 0.630" // each on its own pair
  })
  void lossFollowsTheFormula(int awg, double feet, double ohms, double decibels) {
    assertEquals(decibels, solidLine(awg, feet, ohms).loss().inDecibels(), 0.001);
  }

  @Test
  void lossOnAConstantVoltageLineFollowsTheSameFormula() {
    // 100 W at 70.7 V: 49.98 Ω; 500 ft of 16 AWG: 4.015 Ω; 20·log10(53.995/49.98) = 0.671 dB
    assertEquals(0.671, solidLine(16, 500, 49.98).loss().inDecibels(), 0.001);
  }

  @ParameterizedTest
  @CsvSource({"0.40, 0.4238", "0.80, 0.8279"}) // 20·log10(1.05), 20·log10(1.10)
  void shareOfTheLoadMeansAFixedLoss(double loopOhms, double decibels) {
    SpeakerLine line = new SpeakerLine(Resistance.ohms(8), Resistance.ohms(loopOhms));
    assertEquals(decibels, line.loss().inDecibels(), 0.0001);
    assertEquals(loopOhms / 8, line.shareOfLoad().inFraction(), 1e-12);
  }

  /**
   * Worked example of an amplifier's manual: 160 ft of 10 AWG to 8 Ω at 75 W. The load becomes
   * 8.3264 Ω, the amplifier gives 72 W, the speaker gets 69 W, the wire takes 3 W.
   */
  @Test
  void powersAgreeWithTheManualsWorkedExample() {
    SpeakerLine line = new SpeakerLine(Resistance.ohms(8), Resistance.ohms(160 * 0.00204));
    assertEquals(8.3264, line.load().plus(line.loop()).inOhms(), 1e-9);
    assertEquals(69, 75 * line.powerKept().inFraction(), 0.5);
    assertEquals(3, 72 * line.powerLost().inFraction(), 0.5);
  }

  /** Watts lost in each foot at 75 W into 8 Ω (9.375 A²), the same manual. */
  @ParameterizedTest
  @CsvSource({"10, 0.0191", "12, 0.0303", "14, 0.0482", "16, 0.0767", "18, 0.1218"})
  void powerLostInAFootAgreesWithTheManual(int awg, double watts) {
    double computed = 75 * line(conductors.stranded(awg), 1, 8).powerLost().inFraction();
    assertEquals(watts, computed, watts * 0.005); // the manual's foot leaves the current as it is
  }

  @Test
  void powerKeptFollowsTheFormula() {
    // 100 ft of 16 AWG to 8 Ω: (8/8.8031)² = 0.826
    assertEquals(0.826, solidLine(16, 100, 8).powerKept().inFraction(), 0.0005);
  }

  @Test
  void dampingFactorCountsWireAndAmplifier() {
    // 8 Ω, 50 ft of 14 AWG (0.2525 Ω), amplifier's damping factor 400 (0.02 Ω): 8/0.2725 = 29.4
    assertEquals(29.4, solidLine(14, 50, 8).damping(Resistance.ohms(0.02)).value(), 0.05);
  }

  @Test
  void dampingFactorOfALongThinWireIsBelowTen() {
    // 8/(0.8031 + 0.02) = 9.72
    assertEquals(9.72, solidLine(16, 100, 8).damping(Resistance.ohms(0.02)).value(), 0.01);
  }

  /**
   * Roger Russell, Speaker Wire: A History: longest run in feet for a wire of 5 % of the load. His
   * figures are rounded; all 28 lie within 5 % of the formula, 22 AWG included.
   */
  @ParameterizedTest
  @CsvSource({
    // awg, 2 Ω, 4 Ω, 6 Ω, 8 Ω
    "22, 3, 6, 9, 12",
    "20, 5, 10, 15, 20",
    "18, 8, 16, 24, 32",
    "16, 12, 24, 36, 48",
    "14, 20, 40, 60, 80",
    "12, 30, 60, 90, 120",
    "10, 50, 100, 150, 200"
  })
  void longestRunAgreesWithRussellsTable(int awg, double at2, double at4, double at6, double at8) {
    double[] published = {at2, at4, at6, at8};
    for (int i = 0; i < published.length; i++) {
      Resistance load = Resistance.ohms(2 * (i + 1));
      Resistance loop = SpeakerLine.largestLoop(load, Ratio.percent(5));
      double perFoot = solidLine(awg, 1, 8).loop().inOhms();
      assertEquals(published[i], loop.inOhms() / perFoot, published[i] * 0.05, "load " + load);
    }
  }

  /** Longest run in feet for half a decibel, 10^(0.5/20) − 1 = 5.93 % of the load. */
  @ParameterizedTest
  @CsvSource({
    "18, 8, 37.1", "18, 4, 18.6", "16, 8, 59.0", "16, 4, 29.5", "14, 8, 93.9",
    "14, 4, 46.9", "12, 8, 149", "12, 4, 74.6", "10, 8, 237", "10, 4, 119"
  })
  void longestRunForHalfADecibelFollowsTheFormula(int awg, double ohms, double feet) {
    Resistance loop = SpeakerLine.largestLoop(Resistance.ohms(ohms), Decibels.decibels(0.5));
    assertEquals(feet, loop.inOhms() / solidLine(awg, 1, 8).loop().inOhms(), feet * 0.003);
  }

  @Test
  void halfADecibelOnAConstantVoltageLineIsReachedAtItsLength() {
    // 49.98 Ω · 5.93 % / 0.008031 Ω/ft = 369 ft
    Resistance loop = SpeakerLine.largestLoop(Resistance.ohms(49.98), Decibels.decibels(0.5));
    assertEquals(369, loop.inOhms() / solidLine(16, 1, 8).loop().inOhms(), 0.5);
  }

  @Test
  void loadOfNothingIsRefused() {
    Resistance none = Resistance.ohms(0);
    Resistance some = Resistance.ohms(1);
    assertThrows(IllegalArgumentException.class, () -> new SpeakerLine(none, some));
    assertThrows(
        IllegalArgumentException.class, () -> SpeakerLine.largestLoop(none, Ratio.percent(5)));
    assertThrows(
        IllegalArgumentException.class,
        () -> SpeakerLine.largestLoop(none, Decibels.decibels(0.5)));
  }

  @Test
  void wireWithoutResistanceIsTakenAndANegativeOneRefused() {
    Resistance eight = Resistance.ohms(8);
    assertEquals(0, new SpeakerLine(eight, Resistance.ohms(0)).loss().inDecibels());
    assertThrows(
        IllegalArgumentException.class, () -> new SpeakerLine(eight, Resistance.ohms(-0.01)));
  }

  @Property
  void longerRunNeverLosesLess(
      @ForAll @IntRange(min = 10, max = 24) int awg,
      @ForAll @DoubleRange(min = 2, max = 16) double ohms,
      @ForAll @DoubleRange(min = 1, max = 500) double feet,
      @ForAll @DoubleRange(min = 0, max = 500) double further) {
    SpeakerLine shorter = solidLine(awg, feet, ohms);
    SpeakerLine longer = solidLine(awg, feet + further, ohms);
    assertTrue(longer.loss().compareTo(shorter.loss()) >= 0);
    assertTrue(longer.powerLost().compareTo(shorter.powerLost()) >= 0);
    assertTrue(longer.powerKept().compareTo(shorter.powerKept()) <= 0);
  }

  @Property
  void thickerWireNeverLosesMore(
      @ForAll @IntRange(min = 1, max = 24) int awg,
      @ForAll @DoubleRange(min = 2, max = 16) double ohms,
      @ForAll @DoubleRange(min = 1, max = 500) double feet) {
    assertTrue(
        solidLine(awg - 1, feet, ohms).loss().compareTo(solidLine(awg, feet, ohms).loss()) <= 0);
  }

  @Property
  void hotterWireNeverLosesLess(
      @ForAll @IntRange(min = 10, max = 24) int awg,
      @ForAll @DoubleRange(min = -40, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0, max = 40) double hotterBy) {
    Length run = Length.feet(100);
    Resistance load = Resistance.ohms(8);
    CopperConductor wire = conductors.solid(awg);
    SpeakerLine cool = new SpeakerLine(load, wire.loopOver(run, Temperature.celsius(celsius)));
    SpeakerLine hot =
        new SpeakerLine(load, wire.loopOver(run, Temperature.celsius(celsius + hotterBy)));
    assertTrue(hot.loss().compareTo(cool.loss()) >= 0);
  }

  @Property
  void largestLoopLosesExactlyTheLimit(
      @ForAll @DoubleRange(min = 2, max = 100) double ohms,
      @ForAll @DoubleRange(min = 0.01, max = 3) double decibels) {
    Resistance load = Resistance.ohms(ohms);
    Resistance loop = SpeakerLine.largestLoop(load, Decibels.decibels(decibels));
    assertEquals(decibels, new SpeakerLine(load, loop).loss().inDecibels(), 1e-9);
  }

  @Property
  void shareOfVoltageLostIsOneLessTheShareOfVoltageKept(
      @ForAll @DoubleRange(min = 2, max = 100) double ohms,
      @ForAll @DoubleRange(min = 0, max = 10) double loop) {
    SpeakerLine line = new SpeakerLine(Resistance.ohms(ohms), Resistance.ohms(loop));
    double lossAsPower = Math.pow(10, -line.loss().inDecibels() / 10);
    assertEquals(lossAsPower, line.powerKept().inFraction(), 1e-12);
    assertEquals(
        Math.sqrt(line.powerKept().inFraction()), 1 - line.powerLost().inFraction(), 1e-12);
  }
}
