package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.record.Job;
import wallbook.record.LinkConfiguration;
import wallbook.record.LossDirection;
import wallbook.record.PairCategory;
import wallbook.record.PairParameter;
import wallbook.record.SweepPoint;
import wallbook.record.TestStandard;
import wallbook.wording.Phrase;

class SweepAssessmentTest {
  private static final double[] SWEPT = {1, 4, 10, 16, 31.25, 62.5, 100, 200, 250};

  private static List<LimitLine> lines(PairCategory category) {
    LimitLines lines = new LimitLines(Jobs.TABLES);
    return List.of(
            PairParameter.INSERTION_LOSS,
            PairParameter.NEXT,
            PairParameter.PSNEXT,
            PairParameter.ACRF,
            PairParameter.PSACRF,
            PairParameter.RETURN_LOSS)
        .stream()
        .map(
            p ->
                lines
                    .line(TestStandard.TIA_568_2_D, category, LinkConfiguration.PERMANENT_LINK, p)
                    .orElseThrow())
        .toList();
  }

  private static Job job(String keys, List<SweepPoint> sweep) {
    Job job =
        PairJobs.job(
            "cat6",
            "length: 80 m",
            "date: 2026-04-20, kind: certification, result: pass, " + PairJobs.LIMIT_SIX + keys);
    return PairJobs.withSweep(job, "t1", sweep);
  }

  private static List<String> assumptions(Assessment assessment) {
    return assessment.assumptions().stream().map(Phrase::key).toList();
  }

  private static Assessment of(List<SweepPoint> sweep, String topic) {
    return PairJobs.only(job("", sweep), topic);
  }

  @ParameterizedTest
  @CsvSource({"insertion-loss", "next", "psnext", "acrf", "psacrf", "return-loss"})
  void aWholeSweepWithAMarginIsWithin(String parameter) {
    List<SweepPoint> sweep = PairJobs.wholeSweep(lines(PairCategory.CAT6), 0.5, SWEPT);
    Assessment assessment = of(sweep, "pairs.test." + parameter);
    assertEquals(Verdict.WITHIN, assessment.verdict(), assessment::toString);
    assertEquals(0.5, ((Decibels) assessment.margin().orElseThrow()).inDecibels(), 1e-9);
  }

  @Test
  void theWorstPointIsFoundWithItsPairAndFrequency() {
    List<SweepPoint> sweep =
        new ArrayList<>(PairJobs.wholeSweep(lines(PairCategory.CAT6), 3, SWEPT));
    // limit at 100 MHz 14.0 dB by an instrument manual; 13.2 is 0.8 below
    sweep.add(PairJobs.point(PairParameter.RETURN_LOSS, "78", 100, 13.2, LossDirection.TO_FROM));

    Assessment assessment = of(sweep, "pairs.test.return-loss");

    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals(-0.8, ((Decibels) assessment.margin().orElseThrow()).inDecibels(), 1e-9);
    Phrase where = assessment.limitedBy().orElseThrow();
    assertEquals("78", where.arguments().get("pair"));
    assertEquals(Frequency.megahertz(100), where.arguments().get("frequency"));
    assertEquals(Phrase.of("pairs.end.to-from"), where.arguments().get("end"));
  }

  @Test
  void aValueOnTheLimitPasses() {
    List<SweepPoint> sweep = PairJobs.wholeSweep(lines(PairCategory.CAT6), 0, SWEPT);
    assertEquals(Verdict.WITHIN, of(sweep, "pairs.test.return-loss").verdict());
  }

  @ParameterizedTest
  @CsvSource({
    // margin dB, verdict with an instrument accurate to 0.8 dB, what is said
    "0.9, WITHIN, ''",
    "0.8, CONDITIONAL, pairs.accuracy.marginal-pass",
    "0.1, CONDITIONAL, pairs.accuracy.marginal-pass",
    "-0.1, BEYOND, pairs.accuracy.marginal-fail",
    "-0.9, BEYOND, ''"
  })
  void aResultWithinTheInstrumentsAccuracyIsMarginal(double margin, Verdict expected, String said) {
    // a ten-millionth of a decibel towards the limit, so that binary rounding does not decide
    List<SweepPoint> sweep =
        PairJobs.wholeSweep(lines(PairCategory.CAT6), margin - Math.signum(margin) * 1e-7, SWEPT);
    Assessment assessment =
        PairJobs.only(job(", accuracy: 0.8 dB", sweep), "pairs.test.return-loss");
    assertEquals(expected, assessment.verdict());
    assertEquals(
        said,
        String.join(
            " ",
            assumptions(assessment).stream()
                .filter(key -> key.startsWith("pairs.accuracy"))
                .toList()));
  }

  @Test
  void anUnstatedAccuracyIsSaidToBeUnstated() {
    List<SweepPoint> sweep = PairJobs.wholeSweep(lines(PairCategory.CAT6), 2, SWEPT);
    assertTrue(assumptions(of(sweep, "pairs.test.next")).contains("pairs.accuracy.not-stated"));
  }

  /** Rules of a field-instrument manual: return loss below 3 dB of loss, NEXT below 4 dB. */
  @ParameterizedTest
  @CsvSource({
    "RETURN_LOSS, 36, 2.9, true",
    "RETURN_LOSS, 36, 3.0, false",
    "NEXT, 36-45, 3.9, true",
    "NEXT, 36-45, 4.0, false",
    "PSNEXT, 36, 3.9, true",
    "PSNEXT, 36, 4.0, false"
  })
  void whereTheLossIsSmallAValueCannotFail(
      PairParameter parameter, String pair, double lossDb, boolean free) {
    List<SweepPoint> sweep =
        List.of(
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 10, lossDb),
            PairJobs.point(PairParameter.INSERTION_LOSS, "45", 10, lossDb),
            PairJobs.point(parameter, pair, 10, 1));
    Assessment assessment = of(sweep, "pairs.test." + PairWords.slug(parameter));
    assertEquals(free, assessment.verdict() != Verdict.BEYOND);
    assertEquals(free, assessment.limitedBy().orElseThrow().key().equals("pairs.sweep.all-free"));
  }

  @Test
  void ofTwoPairsTheOneWithMoreLossCounts() {
    List<SweepPoint> sweep =
        List.of(
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 10, 3),
            PairJobs.point(PairParameter.INSERTION_LOSS, "45", 10, 5),
            PairJobs.point(PairParameter.NEXT, "36-45", 10, 1));
    assertEquals(Verdict.BEYOND, of(sweep, "pairs.test.next").verdict());
  }

  @Test
  void withoutMeasuredLossNothingIsFree() {
    List<SweepPoint> sweep =
        List.of(
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 10, 1),
            PairJobs.point(PairParameter.NEXT, "36-45", 10, 1));
    assertEquals(Verdict.BEYOND, of(sweep, "pairs.test.next").verdict());
  }

  @Test
  void lossBetweenTwoSweptFrequenciesLiesOnALine() {
    // 2 dB at 10 and 4 dB at 20 MHz: 2.9 dB at 14.5, 3.1 dB at 15.5
    List<SweepPoint> sweep =
        List.of(
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 10, 2),
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 20, 4),
            PairJobs.point(PairParameter.RETURN_LOSS, "36", 14.5, 1),
            PairJobs.point(PairParameter.RETURN_LOSS, "36", 15.5, 1));
    Assessment assessment = of(sweep, "pairs.test.return-loss");
    assertEquals(
        Frequency.megahertz(15.5),
        assessment.limitedBy().orElseThrow().arguments().get("frequency"));
    assertEquals(1, free(assessment));
  }

  @ParameterizedTest
  @CsvSource({"9", "21"})
  void lossIsNotCarriedBeyondWhatWasSwept(double megahertz) {
    List<SweepPoint> sweep =
        List.of(
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 10, 1),
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 20, 1),
            PairJobs.point(PairParameter.RETURN_LOSS, "36", megahertz, 1));
    assertEquals(Verdict.BEYOND, of(sweep, "pairs.test.return-loss").verdict());
  }

  /**
   * The rule of 70 dB for far-end crosstalk, 67 dB for its power sum: crosstalk is ratio + loss.
   */
  @ParameterizedTest
  @CsvSource({
    "ACRF, 36-45, 50, 20.1, true",
    "ACRF, 36-45, 50, 20.0, false",
    "PSACRF, 36, 50, 17.1, true",
    "PSACRF, 36, 50, 17.0, false"
  })
  void farEndCrosstalkInTheNoiseCannotFail(
      PairParameter parameter, String pair, double ratioDb, double lossDb, boolean free) {
    List<SweepPoint> sweep =
        List.of(
            PairJobs.point(PairParameter.INSERTION_LOSS, "36", 1, lossDb),
            PairJobs.point(PairParameter.INSERTION_LOSS, "45", 1, lossDb + 5),
            PairJobs.point(parameter, pair, 1, ratioDb));
    Assessment assessment = of(sweep, "pairs.test." + PairWords.slug(parameter));
    assertEquals(free, assessment.verdict() != Verdict.BEYOND);
  }

  private static int free(Assessment assessment) {
    return assessment.assumptions().stream()
        .filter(phrase -> phrase.key().startsWith("pairs.sweep.free"))
        .map(phrase -> (Integer) phrase.arguments().get("count"))
        .findFirst()
        .orElse(0);
  }

  @Test
  void pointsOutsideTheRangeAreCountedNotJudged() {
    List<SweepPoint> sweep =
        List.of(
            PairJobs.point(PairParameter.RETURN_LOSS, "36", 250, 30),
            PairJobs.point(PairParameter.RETURN_LOSS, "36", 251, 0),
            PairJobs.point(PairParameter.RETURN_LOSS, "36", 300, 0));
    Assessment assessment = of(sweep, "pairs.test.return-loss");
    assertTrue(assessment.holds());
    assertTrue(assessment.assumptions().contains(Phrase.counted("pairs.sweep.outside", 2)));
  }

  @Test
  void aSweepWithoutPointsInRangeIsNotStated() {
    Assessment assessment =
        of(
            List.of(PairJobs.point(PairParameter.RETURN_LOSS, "36", 300, 20)),
            "pairs.test.return-loss");
    assertEquals(Verdict.NOT_STATED, assessment.verdict());
    assertEquals("pairs.missing.sweep-points", assessment.missing().get(0).key());
  }

  @Test
  void aSweepThatStopsShortIsConditional() {
    List<SweepPoint> sweep = PairJobs.wholeSweep(lines(PairCategory.CAT6), 3, 1, 10, 100, 249.9);
    Assessment assessment = of(sweep, "pairs.test.return-loss");
    assertEquals(Verdict.CONDITIONAL, assessment.verdict());
    assertTrue(assumptions(assessment).contains("pairs.sweep.stops-short"));
  }

  @Test
  void aSweepOfFewerPairsOrOneEndIsConditional() {
    List<SweepPoint> sweep =
        PairJobs.wholeSweep(lines(PairCategory.CAT6), 3, SWEPT).stream()
            .filter(p -> !p.pair().equals("78") && p.direction() == LossDirection.FROM_TO)
            .toList();
    Assessment returned = of(sweep, "pairs.test.return-loss");
    assertEquals(Verdict.CONDITIONAL, returned.verdict());
    assertTrue(assumptions(returned).contains("pairs.sweep.pairs-missing"));
    assertTrue(assumptions(returned).contains("pairs.sweep.one-end"));
    Assessment loss = of(sweep, "pairs.test.insertion-loss");
    assertFalse(assumptions(loss).contains("pairs.sweep.one-end"));
  }

  @Test
  void combinationsNamedBothWaysRoundAreOne() {
    List<SweepPoint> sweep = new ArrayList<>();
    for (LossDirection direction : LossDirection.values()) {
      sweep.add(PairJobs.point(PairParameter.NEXT, "36-45", 250, 60, direction));
      sweep.add(PairJobs.point(PairParameter.NEXT, "45-36", 250, 60, direction));
    }
    Phrase gap = of(sweep, "pairs.test.next").assumptions().get(0);
    assertEquals(1, gap.arguments().get("found"));
    assertEquals(6, gap.arguments().get("expected"));
  }

  @Test
  void insertionLossIsHeldAgainstTheOtherStandardToo() {
    // class E link at 250 MHz 30.67 dB: 0.9 x (28.777 + 4.225 + 0.0158) + 3 x 0.02 x 15.811
    List<SweepPoint> sweep = List.of(PairJobs.point(PairParameter.INSERTION_LOSS, "36", 250, 31.0));
    Assessment tia = of(sweep, "pairs.test.insertion-loss");
    Assessment iso = of(sweep, "pairs.test.insertion-loss.iso");
    assertTrue(tia.holds()); // 31.1 dB as remembered
    assertEquals(Verdict.BEYOND, iso.verdict());
    assertEquals(30.67, ((Decibels) iso.limit().orElseThrow()).inDecibels(), 0.01);
  }

  @Test
  void theOtherStandardDoesNotDecideTheTest() {
    List<SweepPoint> sweep = List.of(PairJobs.point(PairParameter.INSERTION_LOSS, "36", 250, 31.0));
    assertTrue(of(sweep, "pairs.test.result").holds());
  }

  @Test
  void limitsThatTheTablesLackAreNotJudged() {
    Job job =
        PairJobs.withSweep(
            PairJobs.job(
                "cat6",
                "length: 80 m",
                """
                date: 2026-04-20, kind: certification, result: pass,
                limit: {standard: iso_11801_1, category: cat6, configuration: channel}
                """),
            "t1",
            List.of(
                PairJobs.point(PairParameter.NEXT, "36-45", 100, 10),
                PairJobs.point(PairParameter.INSERTION_LOSS, "36", 100, 10)));
    assertEquals(Verdict.INFORMATION, PairJobs.only(job, "pairs.test.next").verdict());
    assertTrue(PairJobs.only(job, "pairs.test.insertion-loss").holds());
    assertTrue(PairJobs.any(job, "pairs.test.insertion-loss.iso").isEmpty());
  }

  @Test
  void aSweepWithoutALimitIsNotStated() {
    Job job =
        PairJobs.withSweep(
            PairJobs.job(
                "cat6", "length: 80 m", "date: 2026-04-20, kind: certification, result: pass"),
            "t1",
            List.of(PairJobs.point(PairParameter.NEXT, "36-45", 100, 10)));
    Assessment assessment = PairJobs.only(job, "pairs.test.limit");
    assertEquals("pairs.missing.test-limit", assessment.missing().get(0).key());
  }

  @Test
  void aCertificationNamesWhatItLacks() {
    Assessment assessment =
        of(List.of(PairJobs.point(PairParameter.NEXT, "36-45", 100, 60)), "pairs.test.complete");
    assertEquals(5, assessment.missing().size());
    List<SweepPoint> whole = PairJobs.wholeSweep(lines(PairCategory.CAT6), 1, SWEPT);
    assertTrue(PairJobs.any(job("", whole), "pairs.test.complete").isEmpty());
  }

  @Test
  void aFailedSweepMayStillMeetALowerCategory() {
    double[] both = {1, 4, 10, 31.25, 100};
    List<SweepPoint> sweep =
        new ArrayList<>(PairJobs.wholeSweep(lines(PairCategory.CAT6), 1, both));
    sweep.add(PairJobs.point(PairParameter.NEXT, "36-45", 100, 41)); // limit 41.8, 5e 32.3
    Job job = job("", sweep);
    assertEquals(Verdict.BEYOND, PairJobs.only(job, "pairs.test.result").verdict());
    assertEquals(
        Phrase.of("pairs.test.lower-met", "category", Phrase.of("pairs.category.cat5e")),
        PairJobs.only(job, "pairs.test.lower-category").limitedBy().orElseThrow());
    // 1000BASE-T wants Category 5e and is kept, with the reason; 10GBASE-T wants Category 6
    Assessment gigabit = PairJobs.only(job, "pairs.ethernet.1000base-t");
    assertEquals(Verdict.WITHIN, gigabit.verdict());
    assertTrue(assumptions(gigabit).contains("pairs.failed-test-lower"));
    assertEquals(Verdict.BEYOND, PairJobs.only(job, "pairs.ethernet.10gbase-t").verdict());
  }

  @Test
  void ofTheLowerCategoriesTheHighestMetIsNamed() {
    // 5 dB inside every line of Category 6, but not swept to the 500 MHz of 6A, and one point out
    List<SweepPoint> sweep =
        new ArrayList<>(PairJobs.wholeSweep(lines(PairCategory.CAT6), 5, SWEPT));
    sweep.add(PairJobs.point(PairParameter.RETURN_LOSS, "36", 500, 1)); // limit 8 dB
    Job job =
        PairJobs.withSweep(
            PairJobs.job(
                "cat6a",
                "length: 80 m",
                """
                date: 2026-04-20, kind: certification, result: fail,
                limit: {standard: tia_568_2_d, category: cat6a, configuration: permanent_link}
                """),
            "t1",
            sweep);
    assertEquals(
        Phrase.of("pairs.test.lower-met", "category", Phrase.of("pairs.category.cat6")),
        PairJobs.only(job, "pairs.test.lower-category").limitedBy().orElseThrow());
  }

  @Test
  void theCategoryOfTheFailedLimitIsNotALowerOne() {
    // recorded as failed, though every value is inside: Category 5e at best, and 5e was not met
    List<SweepPoint> sweep = PairJobs.wholeSweep(lines(PairCategory.CAT5E), 1, 1, 10, 100);
    Job job =
        PairJobs.withSweep(
            PairJobs.job(
                "cat5e",
                "length: 80 m",
                """
                date: 2026-04-20, kind: certification, result: fail,
                limit: {standard: tia_568_2_d, category: cat5e, configuration: permanent_link}
                """),
            "t1",
            sweep);
    assertTrue(PairJobs.any(job, "pairs.test.lower-category").isEmpty());
  }

  @Test
  void aValueOnTheLineStillMeetsALowerCategory() {
    List<SweepPoint> sweep =
        PairJobs.wholeSweep(lines(PairCategory.CAT5E), 1e-9, 1, 10, 31.25, 100);
    assertTrue(PairJobs.any(job("", sweep), "pairs.test.lower-category").isPresent());
    List<SweepPoint> beyond =
        PairJobs.wholeSweep(lines(PairCategory.CAT5E), -0.01, 1, 10, 31.25, 100);
    assertTrue(PairJobs.any(job("", beyond), "pairs.test.lower-category").isEmpty());
  }

  @Test
  void aLinkTooShortToFailIsWithinWhenSweptWhole() {
    List<SweepPoint> sweep = new ArrayList<>();
    for (String pair : List.of("12", "36", "45", "78")) {
      sweep.add(PairJobs.point(PairParameter.INSERTION_LOSS, pair, 250, 2));
      for (LossDirection direction : LossDirection.values()) {
        sweep.add(PairJobs.point(PairParameter.RETURN_LOSS, pair, 250, 1, direction));
      }
    }
    assertEquals(Verdict.WITHIN, of(sweep, "pairs.test.return-loss").verdict());
    sweep.removeIf(point -> point.pair().equals("78"));
    assertEquals(Verdict.CONDITIONAL, of(sweep, "pairs.test.return-loss").verdict());
  }

  @Test
  void aSweepOfCrosstalkRulesSplitPairsOut() {
    Job job = job(", wire_map: [1, 2, 3, 4, 5, 6, 7, 8]", List.of());
    assertFalse(assumptions(PairJobs.only(job, "pairs.test.wire-map")).isEmpty());
    Job swept =
        job(
            ", wire_map: [1, 2, 3, 4, 5, 6, 7, 8]",
            List.of(PairJobs.point(PairParameter.NEXT, "36-45", 100, 60)));
    assertTrue(assumptions(PairJobs.only(swept, "pairs.test.wire-map")).isEmpty());
    Job other =
        job(
            ", wire_map: [1, 2, 3, 4, 5, 6, 7, 8]",
            List.of(PairJobs.point(PairParameter.RETURN_LOSS, "36", 100, 60)));
    assertFalse(assumptions(PairJobs.only(other, "pairs.test.wire-map")).isEmpty());
  }

  @Test
  void theLimitIsNamedInTheWordsOfItsStandard() {
    List<SweepPoint> sweep = List.of(PairJobs.point(PairParameter.INSERTION_LOSS, "36", 250, 20));
    assertEquals("pairs.category.cat6", categoryOf(of(sweep, "pairs.test.insertion-loss")));
    assertEquals("pairs.class.cat6", categoryOf(of(sweep, "pairs.test.insertion-loss.iso")));
  }

  private static String categoryOf(Assessment assessment) {
    Phrase limit = (Phrase) assessment.asked().arguments().get("limit");
    return ((Phrase) limit.arguments().get("category")).key();
  }

  @Test
  void aFailedSweepThatMeetsNothingLeavesDoubt() {
    List<SweepPoint> sweep =
        List.of(PairJobs.point(PairParameter.NEXT, "36-45", 100, 30)); // below 5e too, 32.3
    Job job = job("", sweep);
    assertTrue(PairJobs.any(job, "pairs.test.lower-category").isEmpty());
    Assessment gigabit = PairJobs.only(job, "pairs.ethernet.1000base-t");
    assertEquals(Verdict.CONDITIONAL, gigabit.verdict());
    assertTrue(assumptions(gigabit).contains("pairs.failed-test"));
  }

  @ParameterizedTest
  @EnumSource(PairCategory.class)
  void everyCategoryHasAllSixLines(PairCategory category) {
    assertEquals(6, lines(category).size());
  }
}
