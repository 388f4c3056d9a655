package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;
import wallbook.record.Job;
import wallbook.wording.Phrase;

class PowerAssessmentTest {

  private static Assessment of(int number, String cable, String runKeys, String... tests) {
    return PairJobs.only(PairJobs.job(cable, runKeys, tests), "pairs.poe.class-" + number);
  }

  private static double watts(Assessment assessment) {
    return ((Power) assessment.value().orElseThrow()).inWatts();
  }

  private static List<String> keys(List<Phrase> phrases) {
    return phrases.stream().map(Phrase::key).toList();
  }

  /**
   * Worked by hand. 23 AWG, 60 m at 20 °C: loop of one pair 2 x 66.78e-3 x 60 = 8.013 Ω (wire table
   * 20.36 Ω/1000 ft), two connections 0.8 Ω, 10 m of cords at 14 Ω/100 m 2.8 Ω: 11.613 Ω. Two pairs
   * 5.807 Ω, four 2.903 Ω. Class 4: 30 − 0.36 x 5.807 = 27.91 W; class 6: 60 − 1.44 x 2.903 =
   * 55.82.
   */
  @ParameterizedTest
  @CsvSource({
    // class 3: (15.4/44)² = 0.1225; 15.4 − 0.1225 x 5.807 = 14.69 W
    "3, 14.69",
    "4, 27.91",
    "6, 55.82",
    // class 8: (90/52)² = 2.9956; 90 − 2.9956 x 2.903 = 81.30 W
    "8, 81.30"
  })
  void theDeviceGetsWhatTheLoopLeaves(int number, double expected) {
    Assessment assessment = of(number, "cat6", "length: 60 m");
    assertEquals(Verdict.WITHIN, assessment.verdict());
    assertEquals(expected, watts(assessment), 0.01);
  }

  @Test
  void lossVoltageAndCurrentAreToldBeside() {
    // class 4: 0.6 A; 0.36 x 5.807 = 2.09 W lost; 50 − 0.6 x 5.807 = 46.52 V
    Phrase loop = of(4, "cat6", "length: 60 m").limitedBy().orElseThrow();
    assertEquals(5.807, ((Resistance) loop.arguments().get("resistance")).inOhms(), 0.001);
    assertEquals(2.09, ((Power) loop.arguments().get("loss")).inWatts(), 0.005);
    assertEquals(46.52, ((Voltage) loop.arguments().get("voltage")).inVolts(), 0.005);
    assertEquals(2, loop.arguments().get("pairs"));
  }

  @Test
  void heatCostsPower() {
    // 60 °C: x 1.1572 on the cable: 9.273 + 3.6 = 12.873 Ω; / 2 = 6.436; 30 − 0.36 x 6.436 = 27.68
    Assessment assessment = of(4, "cat6", "length: 60 m\nhottest: 60 °C");
    assertEquals(27.68, watts(assessment), 0.01);
    assertTrue(keys(assessment.assumptions()).contains("pairs.temperature.run"));
  }

  @Test
  void theGreatestResistanceOfTheStandardStandsInForAnUnknownGauge() {
    // 60 m at 9.38 Ω/100 m: loop 11.256 + 0.8 + 2.8 = 14.856 Ω; / 2 = 7.428; 30 − 0.36 x 7.428
    Assessment assessment = of(4, "plain", "length: 60 m");
    assertEquals(27.326, watts(assessment), 0.005);
    assertTrue(keys(assessment.assumptions()).contains("pairs.gauge-unknown"));
    assertTrue(keys(assessment.assumptions()).contains("pairs.four-pairs-assumed"));
  }

  @Test
  void strandedConductorsResistMore() {
    // 24 AWG 84.21e-3 x 1.02 x 2 x 60 = 10.307 Ω + 3.6 = 13.907; / 2; 30 − 0.36 x 6.954 = 27.497
    assertEquals(27.497, watts(of(4, "cat6-stranded", "length: 60 m")), 0.005);
  }

  @Test
  void aMeasuredLoopGoesBeforeAComputedOne() {
    // 10 Ω measured as a link, cords 2.8 Ω: 12.8 / 2 = 6.4 Ω; 30 − 0.36 x 6.4 = 27.696 W
    Assessment assessment =
        of(
            4,
            "cat6",
            "length: 60 m",
            "date: 2026-04-20, kind: resistance, result: pass, loop_resistance: 10 ohm");
    assertEquals(27.696, watts(assessment), 0.001);
    assertTrue(keys(assessment.assumptions()).contains("pairs.loop-as-measured"));
  }

  @Test
  void aLoopMeasuredAsAChannelHasItsCords() {
    // 10 / 2 = 5 Ω; 30 − 0.36 x 5 = 28.2 W
    Assessment assessment =
        of(
            4,
            "cat6",
            "length: 60 m",
            """
            date: 2026-04-20, kind: certification, result: pass, loop_resistance: 10 ohm,
            limit: {standard: tia_568_2_d, category: cat6, configuration: channel}
            """);
    assertEquals(28.2, watts(assessment), 0.001);
  }

  @Test
  void aMeasuredLoopServesWithoutALength() {
    Job job =
        PairJobs.job(
            "cat6",
            "",
            "date: 2026-04-20, kind: resistance, result: pass, loop_resistance: 10 ohm");
    assertEquals(Verdict.WITHIN, PairJobs.only(job, "pairs.poe.class-4").verdict());
  }

  @Test
  void withoutLengthOrLoopNothingIsClaimed() {
    Job job = PairJobs.job("cat6", "");
    assertEquals(
        List.of("pairs.missing.length-or-loop"),
        keys(PairJobs.only(job, "pairs.poe.class-1").missing()));
    assertEquals(Verdict.NOT_STATED, PairJobs.only(job, "pairs.poe.highest").verdict());
    assertTrue(PairJobs.any(job, "pairs.poe.draw").isEmpty());
  }

  /**
   * A loop of 25 Ω is the longest channel (ANSI/TIA-568.2-D): all classes of Type 2 to 4 just fit.
   */
  @ParameterizedTest
  @CsvSource({
    "4, 25, true", "4, 25.05, false", "5, 25, true", "5, 25.05, false", "6, 25, true",
    "6, 25.05, false", "7, 24.99, true", "7, 25.05, false", "8, 24.99, true", "8, 25.05, false",
    // Type 1 allows 20 Ω for two pairs, 40 Ω for the loop of one
    "3, 40, true", "3, 40.05, false", "1, 40, true"
  })
  void aClassHoldsUpToTheResistanceOfItsLongestChannel(int number, double ohms, boolean holds) {
    Assessment assessment =
        of(
            number,
            "cat6",
            "length: 60 m",
            """
            date: 2026-04-20, kind: certification, result: not_judged, loop_resistance: %s ohm,
            limit: {standard: tia_568_2_d, category: cat6, configuration: channel},
            """
                .formatted(ohms - 1e-6));
    assertEquals(holds, assessment.verdict() != Verdict.BEYOND, assessment::toString);
  }

  @Test
  void aVeryLongLoopDeliversNothing() {
    Assessment assessment = of(8, "cat6", "length: 900 m");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals("pairs.poe.no-power", assessment.limitedBy().orElseThrow().key());
    assertTrue(assessment.value().isEmpty());
  }

  @Test
  void theHighestClassIsNamedWithWhatTheDeviceGets() {
    Job job = PairJobs.job("cat6", "length: 60 m");
    Assessment highest = PairJobs.only(job, "pairs.poe.highest");
    assertEquals(81.30, watts(highest), 0.01); // as computed by hand above
    assertEquals(8, highest.limitedBy().orElseThrow().arguments().get("class"));
    assertEquals(
        keys(PairJobs.only(job, "pairs.poe.class-8").assumptions()), keys(highest.assumptions()));
    assertEquals(Verdict.WITHIN, highest.verdict());
  }

  @Test
  void onTwoPairsTheHighestClassIsFour() {
    Assessment highest =
        PairJobs.only(PairJobs.job("two-pair", "length: 20 m"), "pairs.poe.highest");
    assertEquals(4, highest.limitedBy().orElseThrow().arguments().get("class"));
    Assessment six = of(6, "two-pair", "length: 20 m");
    assertEquals(
        Phrase.of("pairs.too-few-pairs", "needed", 4, "present", 2), six.limitedBy().orElseThrow());
  }

  @Test
  void theSourceIsToldWhatADeviceDraws() {
    // class 8, 71.28 W over 2.903 Ω: I = (52 − √(52² − 4 x 2.903 x 71.28)) / (2 x 2.903) = 1.4956 A
    Assessment draw = PairJobs.only(PairJobs.job("cat6", "length: 60 m"), "pairs.poe.draw");
    assertEquals(52 * 1.4956, watts(draw), 0.02);
    assertEquals(Verdict.INFORMATION, draw.verdict());
    assertEquals(
        List.of("pairs.temperature.unknown", "pairs.connections", "pairs.cord-resistance"),
        keys(draw.assumptions()));
    assertEquals(Power.watts(90), draw.limit().orElseThrow());
  }

  @Test
  void above60WattsTheBundleMatters() {
    assertEquals(Verdict.WITHIN, of(8, "cat6", "length: 60 m\nbundle: 24").verdict());
    assertEquals(Verdict.CONDITIONAL, of(8, "cat6", "length: 60 m\nbundle: 25").verdict());
    assertEquals(Verdict.WITHIN, of(6, "cat6", "length: 60 m\nbundle: 25").verdict());
    assertEquals(Verdict.BEYOND, of(8, "cat6", "length: 170 m\nbundle: 25").verdict());
  }

  @Test
  void beyondTheChannelOnlyPowerIsClaimed() {
    // 90 m and 10 m of cords are the channel of the standard, handbooks
    Assessment within = of(4, "cat6", "length: 90 m");
    assertEquals(Verdict.WITHIN, within.verdict());
    Assessment longer = of(4, "cat6", "length: 90.1 m");
    assertEquals(Verdict.CONDITIONAL, longer.verdict());
    assertTrue(keys(longer.assumptions()).contains("pairs.poe.longer-than-channel"));
  }

  @Test
  void above60WattsTheCodeIsNamed() {
    List<String> seven = keys(of(7, "cat6", "length: 60 m").assumptions());
    assertTrue(seven.contains("pairs.poe.code-table"));
    assertTrue(seven.contains("pairs.poe.bundle-unknown"));
    List<String> six = keys(of(6, "cat6", "length: 60 m").assumptions());
    assertTrue(!six.contains("pairs.poe.code-table"));
  }

  @Test
  void anyWiringFaultComesFirst() {
    Job job =
        PairJobs.job(
            "cat6",
            "length: 20 m",
            "date: 2026-04-20, kind: wire_map, result: fail, wire_map: [1, 2, 3, 4, 5, 6, 8, 7]");
    Assessment assessment = PairJobs.only(job, "pairs.poe.class-1");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals("pairs.fault-first", assessment.limitedBy().orElseThrow().key());
    assertEquals(
        "pairs.fault-first",
        PairJobs.only(job, "pairs.poe.highest").limitedBy().orElseThrow().key());
  }
}
