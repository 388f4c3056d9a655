package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.DataRate;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.reference.Standing;
import wallbook.wording.Phrase;

class EthernetAssessmentTest {

  private static Assessment of(String application, String cable, String runKeys) {
    return PairJobs.only(PairJobs.job(cable, runKeys), "pairs.ethernet." + application);
  }

  private static List<String> keys(List<Phrase> phrases) {
    return phrases.stream().map(Phrase::key).toList();
  }

  /**
   * TIA TSB-155 as two trade pages quote it: to 37 m whatever the neighbours, 37 to 55 m by alien
   * crosstalk, beyond 55 m not without mitigation. The channel is the run and 10 m of cords.
   */
  @ParameterizedTest
  @CsvSource({
    // channel m, verdict
    "36, WITHIN",
    "37, WITHIN",
    "37.1, CONDITIONAL",
    "50, CONDITIONAL",
    "55, CONDITIONAL",
    "55.1, BEYOND",
    "60, BEYOND"
  })
  void tenGigabitOnCategorySixGoesByTheBulletin(double channel, Verdict expected) {
    Assessment assessment =
        of("10gbase-t", "cat6", "length: %.2f m".formatted(channel - 10 - 1e-9));
    assertEquals(expected, assessment.verdict());
    assertEquals(channel, ((Length) assessment.value().orElseThrow()).inMetres(), 0.01);
  }

  /**
   * IEEE 802.3 and an encyclopedia table: reach 100 m of channel; 10GBASE-T on Category 6A alike.
   */
  @ParameterizedTest
  @CsvSource({
    "10base-t, cat5e",
    "100base-tx, cat5e",
    "1000base-t, cat5e",
    "2.5gbase-t, cat5e",
    "2.5gbase-t, cat6",
    "5gbase-t, cat6a",
    "10gbase-t, cat6a",
    "10gbase-t, cat6-screened"
  })
  void theStandardReachIs100MetresOfChannel(String application, String cable) {
    assertEquals(Verdict.WITHIN, of(application, cable, "length: 90 m").verdict());
    assertEquals(Verdict.BEYOND, of(application, cable, "length: 90.1 m").verdict());
    assertEquals(Length.metres(100), of(application, cable, "length: 50 m").limit().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"cat5e, 20", "cat6, 28"})
  void fiveGigabitBelowCategorySixAIsConditional(String cable, int metres) {
    Assessment assessment = of("5gbase-t", cable, "length: %d m".formatted(metres));
    assertEquals(Verdict.CONDITIONAL, assessment.verdict());
    assertEquals("pairs.ethernet.condition.installed-base", assessment.assumptions().get(0).key());
    assertEquals(Verdict.BEYOND, of("5gbase-t", cable, "length: 90.1 m").verdict());
  }

  @Test
  void whereTenGigabitIsSureFiveIsSureToo() {
    // TSB-155: 37 m of channel whatever the neighbours; 27 m of run and 10 m of cords
    assertEquals(Verdict.WITHIN, of("5gbase-t", "cat6", "length: 27 m").verdict());
    assertEquals(Verdict.WITHIN, of("5gbase-t", "cat6-screened", "length: 90 m").verdict());
  }

  @ParameterizedTest
  @CsvSource({"10gbase-t, cat5e, cat6", "25gbase-t, cat6a, cat8", "40gbase-t, cat6a, cat8"})
  void aCategoryTooLowIsNamed(String application, String cable, String needed) {
    Assessment assessment = of(application, cable, "length: 10 m");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals(
        Phrase.of(
            "pairs.ethernet.needs-category", "category", Phrase.of("pairs.category." + needed)),
        assessment.limitedBy().orElseThrow());
  }

  @Test
  void theMarginIsInMetresOfCable() {
    // 100 m − (35.9 m + 10 m of cords) = 54.1 m
    Assessment assessment = of("1000base-t", "cat6", "length: 35.9 m");
    assertEquals(54.1, ((Length) assessment.margin().orElseThrow()).inMetres(), 1e-9);
    assertEquals(
        List.of("pairs.cords", "pairs.temperature.unknown", "pairs.untested"),
        keys(assessment.assumptions()));
  }

  @Test
  void heatShortensTheReach() {
    // 84 m of link at 40 °C by the standard's table (a test vendor's page), and 10 m of cords
    Assessment assessment = of("1000base-t", "cat6", "length: 85 m\nhottest: 40 °C");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals(94, ((Length) assessment.limit().orElseThrow()).inMetres(), 1e-9);
    assertEquals("pairs.ethernet.heat", assessment.limitedBy().orElseThrow().key());
    assertEquals(
        Verdict.WITHIN, of("1000base-t", "cat6", "length: 84 m\nhottest: 40 °C").verdict());
    assertEquals(
        Verdict.WITHIN, of("1000base-t", "cat6", "length: 85 m\nhottest: 35 °C").verdict());
  }

  @Test
  void heatDoesNotTouchAReachThatNoiseLimits() {
    Assessment assessment = of("10gbase-t", "cat6", "length: 27 m\nhottest: 60 °C");
    assertEquals(Verdict.WITHIN, assessment.verdict());
    assertEquals("pairs.ethernet.reach", assessment.limitedBy().orElseThrow().key());
  }

  @Test
  void hotterThanTheTableReachesIsBeyond() {
    Assessment assessment = of("1000base-t", "cat6", "length: 10 m\nhottest: 61 °C");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals("pairs.length.too-hot", assessment.limitedBy().orElseThrow().key());
    assertEquals(List.of("pairs.temperature.run"), keys(assessment.assumptions()));
  }

  @Test
  void theTradesFigureStandsBesideTheStandardAndSaysWhatItIs() {
    Assessment practice = of("10gbase-t.practice", "cat6", "length: 120 ft");
    assertEquals(Verdict.INFORMATION, practice.verdict());
    assertEquals(Standing.COMMON_PRACTICE, practice.source().standing());
    assertEquals(Length.feet(130), practice.limit().orElseThrow());
    Phrase limit = practice.limitedBy().orElseThrow();
    assertEquals(Length.feet(150), limit.arguments().get("high"));
  }

  @ParameterizedTest
  @CsvSource({"cat5e", "cat6-screened"})
  void theTradesFigureIsForUnscreenedCategorySixAndUp(String cable) {
    assertTrue(
        PairJobs.any(PairJobs.job(cable, "length: 20 m"), "pairs.ethernet.10gbase-t.practice")
            .isEmpty());
  }

  @Test
  void withoutALengthNothingIsClaimed() {
    Job job = PairJobs.job("cat6", "");
    Assessment assessment = PairJobs.only(job, "pairs.ethernet.1000base-t");
    assertEquals(List.of("pairs.missing.length"), keys(assessment.missing()));
    assertEquals(Verdict.NOT_STATED, PairJobs.only(job, "pairs.ethernet.highest").verdict());
    assertTrue(PairJobs.any(job, "pairs.ethernet.10gbase-t.practice").isEmpty());
    // what no length can mend is said all the same
    assertEquals(Verdict.BEYOND, PairJobs.only(job, "pairs.ethernet.40gbase-t").verdict());
  }

  @Test
  void withoutACategoryNothingIsClaimed() {
    assertEquals(
        List.of("pairs.missing.category"),
        keys(of("1000base-t", "plain", "length: 20 m").missing()));
  }

  @Test
  void twoPairsCarryWhatNeedsTwo() {
    assertEquals(Verdict.WITHIN, of("100base-tx", "two-pair", "length: 20 m").verdict());
    Assessment gigabit = of("1000base-t", "two-pair", "length: 20 m");
    assertEquals(Verdict.BEYOND, gigabit.verdict());
    assertEquals(
        Phrase.of("pairs.too-few-pairs", "needed", 4, "present", 2),
        gigabit.limitedBy().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"cat5e, 50, 2.5", "cat6, 27, 10", "cat6, 28, 2.5", "cat6a, 90, 10", "cat6, 90, 2.5"})
  void theFastestSureApplicationIsTheHighest(String cable, int metres, double gigabits) {
    Assessment highest = of("highest", cable, "length: %d m".formatted(metres));
    assertEquals(Verdict.WITHIN, highest.verdict());
    assertTrue(keys(highest.assumptions()).contains("pairs.cords"));
    assertEquals(DataRate.gigabitsPerSecond(gigabits), highest.value().orElseThrow());
  }

  @Test
  void theHighestSaysWhatStopsTheNext() {
    Phrase limit = of("highest", "cat6", "length: 40 m").limitedBy().orElseThrow();
    assertEquals("2.5GBASE-T", limit.arguments().get("application"));
    assertEquals("5GBASE-T", limit.arguments().get("next"));
    assertEquals(
        Phrase.of("pairs.ethernet.condition.installed-base"), limit.arguments().get("why"));
    Phrase top = of("highest", "cat6a", "length: 40 m").limitedBy().orElseThrow();
    assertEquals("25GBASE-T", top.arguments().get("next"));
  }

  @Test
  void aPerhapsIsHighestOnlyWhereNothingIsSure() {
    Job doubtful =
        PairJobs.job(
            "cat6",
            "length: 40 m",
            "date: 2026-04-20, kind: certification, result: fail, reason: no answer");
    Assessment highest = PairJobs.only(doubtful, "pairs.ethernet.highest");
    assertEquals(Verdict.CONDITIONAL, highest.verdict());
    assertEquals(DataRate.gigabitsPerSecond(10), highest.value().orElseThrow());
  }

  @Test
  void aRunTooLongForAnythingHasNoHighest() {
    assertEquals(Verdict.BEYOND, of("highest", "cat6", "length: 200 m").verdict());
  }

  @ParameterizedTest
  @CsvSource({"damaged, pairs.damaged", "abandoned, pairs.abandoned"})
  void aCableThatIsNotWholeCarriesNothing(String condition, String reason) {
    Job job = PairJobs.job("cat6", "length: 20 m\ncondition: " + condition);
    for (Assessment assessment : PairJobs.assess(job)) {
      if (!assessment.topic().startsWith("pairs.length")) {
        assertEquals(Verdict.BEYOND, assessment.verdict(), assessment.topic());
        assertEquals(reason, assessment.limitedBy().orElseThrow().key());
      }
    }
    assertTrue(PairJobs.any(job, "pairs.ethernet.10gbase-t.practice").isEmpty());
  }

  @Test
  void aDarkUnterminatedRunIsJudgedAsItWouldBe() {
    Assessment assessment =
        PairJobs.only(
            Jobs.job(
                PairJobs.yaml("cat6", "length: 20 m\ncondition: dark")
                    .replace(
                        "to: {place: p1, jack: \"1\", finish: terminated}",
                        "to: {place: p1, finish: coiled}")),
            "pairs.ethernet.1000base-t");
    assertEquals(Verdict.WITHIN, assessment.verdict());
    assertTrue(keys(assessment.assumptions()).contains("pairs.once-terminated"));
    assertFalse(
        keys(of("1000base-t", "cat6", "length: 20 m").assumptions())
            .contains("pairs.once-terminated"));
  }

  @Test
  void anUntestedRunIsSaidToBeUntested() {
    assertTrue(
        keys(of("1000base-t", "cat6", "length: 20 m").assumptions()).contains("pairs.untested"));
    Job tested =
        PairJobs.job("cat6", "length: 20 m", "date: 2026-04-20, kind: toning, result: pass");
    assertFalse(
        keys(PairJobs.only(tested, "pairs.ethernet.1000base-t").assumptions())
            .contains("pairs.untested"));
  }

  @Test
  void aWiringFaultStopsWhatNeedsItsPair() {
    Job job =
        PairJobs.job(
            "cat6",
            "length: 20 m",
            "date: 2026-04-20, kind: wire_map, result: fail, wire_map: [1, 2, 3, 4, 5, 6, 7, open]");
    Assessment gigabit = PairJobs.only(job, "pairs.ethernet.1000base-t");
    assertEquals(Verdict.BEYOND, gigabit.verdict());
    assertEquals("pairs.fault-first", gigabit.limitedBy().orElseThrow().key());
    // 100BASE-TX needs pairs 12 and 36 only; doubt stays, for the test failed
    assertEquals(Verdict.CONDITIONAL, PairJobs.only(job, "pairs.ethernet.100base-tx").verdict());
  }

  @Test
  void theNewestTestCounts() {
    String failed =
        "date: 2026-04-20, kind: wire_map, result: fail, wire_map: [1, 2, 3, 4, 5, 6, 7, open]";
    String passed =
        "date: 2026-04-21, kind: wire_map, result: pass, wire_map: [1, 2, 3, 4, 5, 6, 7, 8]";
    for (Job job :
        List.of(
            PairJobs.job("cat6", "length: 20 m", failed, passed),
            PairJobs.job("cat6", "length: 20 m", passed, failed))) {
      assertEquals(Verdict.WITHIN, PairJobs.only(job, "pairs.ethernet.1000base-t").verdict());
    }
  }

  @Test
  void ofTwoTestsOfOneDayTheLastRecordedCounts() {
    String failed =
        "date: 2026-04-20, kind: wire_map, result: fail, wire_map: [1, 2, 3, 4, 5, 6, 7, open]";
    String passed =
        "date: 2026-04-20, kind: wire_map, result: pass, wire_map: [1, 2, 3, 4, 5, 6, 7, 8]";
    assertEquals(
        Verdict.WITHIN,
        PairJobs.only(
                PairJobs.job("cat6", "length: 20 m", failed, passed), "pairs.ethernet.1000base-t")
            .verdict());
    assertEquals(
        Verdict.BEYOND,
        PairJobs.only(
                PairJobs.job("cat6", "length: 20 m", passed, failed), "pairs.ethernet.1000base-t")
            .verdict());
  }

  @Test
  void aLaterTestOfAnotherKindDoesNotClearAFailure() {
    Job job =
        PairJobs.job(
            "cat6",
            "length: 20 m",
            "date: 2026-04-20, kind: certification, result: fail",
            "date: 2026-04-25, kind: toning, result: pass");
    assertEquals(Verdict.CONDITIONAL, PairJobs.only(job, "pairs.ethernet.1000base-t").verdict());
  }

  @Test
  void runsOfOtherMediaAreLeftAlone() {
    assertTrue(PairJobs.assess(PairJobs.job("om3-2", "length: 20 m")).isEmpty());
  }
}
