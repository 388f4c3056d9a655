package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.record.Job;
import wallbook.wording.Phrase;

class TestAssessmentTest {
  private static final String CERTIFIED =
      "date: 2026-04-20, kind: certification, result: pass, " + PairJobs.LIMIT_SIX + ", ";
  private static final String CHANNEL =
      """
      date: 2026-04-20, kind: certification, result: pass,
      limit: {standard: tia_568_2_d, category: cat6, configuration: channel},
      """;

  private static Job job(String test) {
    return PairJobs.job("cat6", "length: 80 m", test);
  }

  private static Assessment of(String topic, String test) {
    return PairJobs.only(job(test), "pairs.test." + topic);
  }

  private static List<String> keys(List<Phrase> phrases) {
    return phrases.stream().map(Phrase::key).toList();
  }

  @Test
  void aSummaryIsJudgedByItsValueAndFrequency() {
    // limit at 100 MHz 14.0 dB by an instrument manual
    Assessment assessment =
        of(
            "return-loss",
            CERTIFIED
                + "worst: [{parameter: return_loss, pair: '36', frequency: 100 MHz, value: 15 dB}]");
    assertEquals(Verdict.WITHIN, assessment.verdict());
    assertEquals(1.0, ((Decibels) assessment.margin().orElseThrow()).inDecibels(), 1e-9);
    assertEquals("pairs.summary.worst", assessment.limitedBy().orElseThrow().key());
    assertTrue(keys(assessment.assumptions()).contains("pairs.summary.worst-only"));
  }

  @Test
  void aRecordedMarginThatDoesNotFitIsPointedOut() {
    String worst =
        "worst: [{parameter: return_loss, frequency: 100 MHz, value: 15 dB, margin: %s dB}]";
    assertTrue(
        keys(of("return-loss", CERTIFIED + worst.formatted("3.1")).assumptions())
            .contains("pairs.summary.margins-differ"));
    assertTrue(
        !keys(of("return-loss", CERTIFIED + worst.formatted("1.05")).assumptions())
            .contains("pairs.summary.margins-differ"));
  }

  @Test
  void aMarginAloneIsTakenAsRecorded() {
    Assessment assessment =
        of("next", CERTIFIED + "worst: [{parameter: next, pair: '36-45', margin: -0.4 dB}]");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertTrue(keys(assessment.assumptions()).contains("pairs.summary.margin-as-recorded"));
    assertEquals("pairs.summary.worst-pair", assessment.limitedBy().orElseThrow().key());
  }

  @ParameterizedTest
  @CsvSource({
    "'frequency: 100 MHz, margin: 1 dB', pairs.summary.worst-frequency",
    "'margin: 1 dB', pairs.summary.worst-anywhere"
  })
  void aSummarySaysWhereAsFarAsItKnows(String keys, String expected) {
    assertEquals(
        expected,
        of("next", CERTIFIED + "worst: [{parameter: next, " + keys + "}]")
            .limitedBy()
            .orElseThrow()
            .key());
  }

  @ParameterizedTest
  @CsvSource({
    "'value: 40 dB', pairs.missing.worst-frequency",
    "'value: 40 dB, frequency: 300 MHz', pairs.missing.worst-frequency",
    "'frequency: 100 MHz', pairs.missing.worst-value"
  })
  void aSummaryThatCannotBeJudgedSaysWhatItLacks(String keys, String missing) {
    Assessment assessment = of("next", CERTIFIED + "worst: [{parameter: next, " + keys + "}]");
    assertEquals(List.of(missing), keys(assessment.missing()));
  }

  @Test
  void theWorstOfTwoSummariesCounts() {
    Assessment assessment =
        of(
            "next",
            CERTIFIED
                + "worst: [{parameter: next, margin: 3 dB}, {parameter: next, margin: 1 dB}]");
    assertEquals(Decibels.decibels(1), assessment.margin().orElseThrow());
  }

  /** Lengths by TIA: 90 m and 100 m (handbooks); 10 % more for the velocity set, from memory. */
  @ParameterizedTest
  @CsvSource({
    "link, 90, WITHIN",
    "link, 90.1, CONDITIONAL",
    "link, 99, CONDITIONAL",
    "link, 99.1, BEYOND",
    "channel, 100, WITHIN",
    "channel, 100.1, CONDITIONAL",
    "channel, 110, CONDITIONAL",
    "channel, 110.1, BEYOND"
  })
  void measuredLengthHasAnAllowance(String configuration, double metres, Verdict expected) {
    String test = configuration.equals("link") ? CERTIFIED : CHANNEL;
    assertEquals(expected, of("length", test + "length: " + metres + " m").verdict());
  }

  @ParameterizedTest
  @CsvSource({"72, WITHIN", "71.9, BEYOND", "88, WITHIN", "88.1, BEYOND"})
  void recordedAndMeasuredLengthShouldAgreeWithinATenth(double metres, Verdict expected) {
    // 80 m recorded, 10 % of it 8 m
    Assessment assessment = of("length-agreement", CERTIFIED + "length: " + metres + " m");
    assertEquals(expected, assessment.verdict());
    assertEquals(8, ((Length) assessment.limit().orElseThrow()).inMetres(), 1e-9);
  }

  @Test
  void disagreementOfLengthsDoesNotFailTheTest() {
    assertEquals(Verdict.WITHIN, of("result", CERTIFIED + "length: 60 m").verdict());
  }

  @Test
  void aLengthThatCameFromTheTesterIsNotComparedWithItself() {
    Job job = PairJobs.job("cat6", "length: 80 m\nlength_by: tester", CERTIFIED + "length: 60 m");
    assertTrue(PairJobs.any(job, "pairs.test.length-agreement").isEmpty());
  }

  /** Weak: delay at 10 MHz 498 ns and 555 ns, skew 44 ns and 50 ns as remembered. */
  @ParameterizedTest
  @CsvSource({
    "link, delay, 498, WITHIN", "link, delay, 499, BEYOND", "channel, delay, 555, WITHIN",
    "channel, delay, 556, BEYOND", "link, skew, 44, WITHIN", "link, skew, 45, BEYOND",
    "channel, skew, 50, WITHIN", "channel, skew, 51, BEYOND"
  })
  void delayAndSkewHaveTheirLimits(
      String configuration, String what, int nanoseconds, Verdict expected) {
    String test = configuration.equals("link") ? CERTIFIED : CHANNEL;
    Assessment assessment = of(what, test + what + ": " + nanoseconds + " ns");
    assertEquals(expected, assessment.verdict());
    assertEquals(nanoseconds, ((Delay) assessment.value().orElseThrow()).inNanoseconds(), 1e-6);
  }

  /** Weak: 21 Ω and 25 Ω as remembered. */
  @ParameterizedTest
  @CsvSource({
    "link, 21, WITHIN",
    "link, 21.1, BEYOND",
    "channel, 25, WITHIN",
    "channel, 25.1, BEYOND"
  })
  void loopResistanceHasItsLimit(String configuration, double ohms, Verdict expected) {
    String test = configuration.equals("link") ? CERTIFIED : CHANNEL;
    assertEquals(
        expected, of("loop-resistance", test + "loop_resistance: " + ohms + " ohm").verdict());
  }

  @Test
  void aMeasuredLoopTellsWhatTheConductorsMayDifferBy() {
    // 3 % of 12 Ω
    Assessment assessment = of("unbalance-allowed", CERTIFIED + "loop_resistance: 12 ohm");
    assertEquals(0.36, ((Resistance) assessment.value().orElseThrow()).inOhms(), 1e-9);
    assertEquals(Verdict.INFORMATION, assessment.verdict());
    assertTrue(assessment.assumptions().isEmpty());
    Assessment unnamed =
        of(
            "unbalance-allowed",
            "date: 2026-04-20, kind: resistance, result: pass, loop_resistance: 12 ohm");
    assertEquals(List.of("pairs.test.taken-as-permanent-link"), keys(unnamed.assumptions()));
  }

  @Test
  void aTestWithoutALimitIsHeldToTheLinksLimits() {
    Assessment assessment =
        of("delay", "date: 2026-04-20, kind: verification, result: pass, delay: 500 ns");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertTrue(keys(assessment.assumptions()).contains("pairs.test.taken-as-permanent-link"));
  }

  /** 80 m in 400 ns is 80 / (0.299792 x 400) = 66.7 % of the velocity of light. */
  @Test
  void lengthAndDelayTellTheVelocity() {
    Assessment assessment = of("velocity", CERTIFIED + "delay: 400 ns");
    assertEquals(66.7, ((Ratio) assessment.value().orElseThrow()).inPercent(), 0.05);
    assertTrue(assessment.limitedBy().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    // 80 m at 60 % is 444.7 ns, at 80 % 333.6 ns
    "444, true",
    "446, false",
    "334, true",
    "333, false"
  })
  void anUnusualVelocitySaysWhatLengthTheDelayWouldMean(int nanoseconds, boolean usual) {
    Assessment assessment = of("velocity", CERTIFIED + "delay: " + nanoseconds + " ns");
    assertEquals(usual, assessment.limitedBy().isEmpty());
  }

  @Test
  void anUnusualVelocityNamesTheShortestAndTheLongest() {
    // 250 ns at 60 %: 44.97 m, at 80 %: 59.96 m
    Phrase unusual = of("velocity", CERTIFIED + "delay: 250 ns").limitedBy().orElseThrow();
    assertEquals(44.97, ((Length) unusual.arguments().get("shortest")).inMetres(), 0.01);
    assertEquals(59.96, ((Length) unusual.arguments().get("longest")).inMetres(), 0.01);
  }

  @Test
  void withoutAnyLengthTheMeasuredOneTellsTheVelocity() {
    Job job = PairJobs.job("cat6", "", CERTIFIED + "delay: 400 ns, length: 80 m");
    assertTrue(PairJobs.any(job, "pairs.test.velocity").isPresent());
    Job zero = PairJobs.job("cat6", "length: 80 m", CERTIFIED + "delay: 0 ns");
    assertTrue(PairJobs.any(zero, "pairs.test.velocity").isEmpty());
    Job none = PairJobs.job("cat6", "", CERTIFIED + "delay: 400 ns");
    assertTrue(PairJobs.any(none, "pairs.test.velocity").isEmpty());
  }

  @Test
  void thePartThatFailsDecidesTheWhole() {
    Assessment result =
        of("result", CERTIFIED + "delay: 600 ns, skew: 5 ns, loop_resistance: 10 ohm");
    assertEquals(Verdict.BEYOND, result.verdict());
    assertTrue(keys(result.assumptions()).contains("pairs.test.recorded-pass"));
    assertEquals("pairs.test.decided-by", result.limitedBy().orElseThrow().key());
  }

  @Test
  void ofSeveralGoodPartsTheOneWithTheLeastMarginStandsForTheWhole() {
    Assessment result =
        of(
            "result",
            CERTIFIED
                + "skew: 5 ns, worst: [{parameter: next, margin: 3 dB},"
                + "{parameter: return_loss, margin: 1 dB}]");
    assertEquals(Verdict.WITHIN, result.verdict());
    assertEquals(Decibels.decibels(1), result.margin().orElseThrow());
    assertTrue(keys(result.assumptions()).contains("pairs.test.parts-not-stated"));
  }

  @Test
  void theWholeShowsTheFiguresOfThePartThatDecides() {
    Assessment result = of("result", CERTIFIED + "delay: 600 ns");
    assertEquals(600, ((Delay) result.value().orElseThrow()).inNanoseconds(), 1e-6);
    assertTrue(result.margin().isPresent());
    assertTrue(keys(result.assumptions()).contains("pairs.test.delay-frequency"));
  }

  @Test
  void aWholeWithNothingMissingDoesNotSaySo() {
    assertTrue(
        !keys(of("result", CERTIFIED + "skew: 5 ns").assumptions())
            .contains("pairs.test.parts-not-stated"));
  }

  @Test
  void aFailureThatTheValuesShowIsNotCalledRecordedAsPassed() {
    Assessment result =
        of(
            "result",
            "date: 2026-04-20, kind: certification, result: fail, "
                + PairJobs.LIMIT_SIX
                + ", delay: 600 ns");
    assertEquals("pairs.test.decided-by", result.limitedBy().orElseThrow().key());
    assertTrue(!keys(result.assumptions()).contains("pairs.test.recorded-pass"));
  }

  @Test
  void aMarginalPartMakesTheWholeConditional() {
    Assessment result =
        of(
            "result",
            CERTIFIED
                + "accuracy: 1 dB, worst: [{parameter: next, margin: 0.5 dB},"
                + "{parameter: return_loss, margin: 6 dB}]");
    assertEquals(Verdict.CONDITIONAL, result.verdict());
  }

  @Test
  void aRecordedFailureStandsWhateverTheValuesSay() {
    Assessment result =
        of(
            "result",
            "date: 2026-04-20, kind: certification, result: fail, reason: cut at the plate,"
                + "skew: 5 ns");
    assertEquals(Verdict.BEYOND, result.verdict());
    assertEquals(
        Phrase.of("pairs.test.failed-because", "reason", "cut at the plate"),
        result.limitedBy().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "pass, WITHIN, pairs.test.as-recorded",
    "fail, BEYOND, pairs.test.failed",
    "not_judged, INFORMATION, pairs.test.not-judged"
  })
  void aTestWithoutValuesIsTakenAtItsWord(String given, Verdict expected, String key) {
    Assessment result = of("result", "date: 2026-04-20, kind: toning, result: " + given);
    assertEquals(expected, result.verdict());
    assertEquals(key, result.limitedBy().orElseThrow().key());
  }

  @Test
  void everyTestOfARunIsAssessed() {
    Job job =
        PairJobs.job(
            "cat6",
            "length: 80 m",
            "date: 2026-04-20, kind: toning, result: pass",
            "date: 2026-04-21, kind: continuity, result: pass");
    assertEquals(2, PairJobs.all(job, "pairs.test.result").size());
  }
}
