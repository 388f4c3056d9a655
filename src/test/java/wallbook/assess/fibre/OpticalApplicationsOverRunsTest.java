package wallbook.assess.fibre;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.PhrasesOf;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.reference.Standing;

/** What runs can carry, end to end from a record. Limits as in {@link FibreCheckValuesTest}. */
class OpticalApplicationsOverRunsTest {
  @Test
  void ninetyMetresOfOm3CarryTenGigabitWithTheMarginInDecibels() {
    Assessment tenGigabit = application("10gbase-sr", FibreJobs.run("r", "om3-2", "90 m"), "");

    assertEquals(Verdict.WITHIN, tenGigabit.verdict());
    assertDecibels(1.770, tenGigabit.value()); // 0.090·3.0 + 2·0.75
    assertDecibels(2.6, tenGigabit.limit());
    assertDecibels(0.83, tenGigabit.margin()); // 2.6 − 1.77
    assertEquals("fibre.limit.loss", firstWords(tenGigabit));
    assertTrue(PhrasesOf.keys(tenGigabit).contains("fibre.assume.other-edition"));
  }

  @ParameterizedTest
  @CsvSource({"25gbase-sr", "50gbase-sr"})
  void ninetyMetresOfOm3AreTwentyTooLongForTwentyFiveGigabit(String name) {
    Assessment result = application(name, FibreJobs.run("r", "om3-2", "90 m"), "");

    assertEquals(Verdict.BEYOND, result.verdict());
    assertMetres(90, result.value());
    assertMetres(70, result.limit());
    assertMetres(-20, result.margin());
    assertEquals("fibre.short.length", firstWords(result));
    // 1.77 ≤ 1.8 with 3.0 dB/km, 1.815 > 1.8 with 3.5: the words say so beside the length.
    assertTrue(PhrasesOf.keys(result).contains("fibre.limit.editions-differ"));
  }

  @Test
  void ninetyMetresOfOm4CarryTwentyFiveGigabitByThirteenHundredths() {
    Assessment result = application("25gbase-sr", FibreJobs.run("r", "om4-2", "90 m"), "");

    assertEquals(Verdict.WITHIN, result.verdict());
    assertDecibels(0.13, result.margin()); // 1.9 − 1.77
    assertEquals(Standing.CONFIRMED, result.source().standing());
  }

  @Test
  void aPairIsSixFibresShortOfAnEightFibreApplication() {
    Assessment result = application("40gbase-sr4", FibreJobs.run("r", "om3-2", "90 m"), "");

    assertEquals(Verdict.BEYOND, result.verdict());
    assertEquals(Optional.of(Count.of(2)), result.value());
    assertEquals(Optional.of(Count.of(8)), result.limit());
    assertEquals(Optional.of(Count.of(-6)), result.margin());
    assertEquals("fibre.short.fibres", firstWords(result));
  }

  @ParameterizedTest(name = "{0} on {1} of {2}: {3}")
  @CsvSource({
    "40gbase-sr4, om3-8, 90 m, WITHIN", // 8 of 8; 90 < 100 m; 1.77 < 1.9
    "40gbase-sr4, om3-4, 90 m, BEYOND", // 4 of 8
    "100gbase-sr4, om4-8, 60 m, WITHIN", // 8 of 8; 60 < 100 m; 1.68 < 1.9
    "100gbase-sr4, om3-8, 71 m, BEYOND", // 70 m
    "100gbase-sr10, om4-8, 20 m, BEYOND", // 8 of 20
    "1000base-sx, om1-2, 275 m, CONDITIONAL", // 0.275·3.5 + 1.5 = 2.46 ≤ 2.60; no cord fits
    "1000base-sx, om1-2, 276 m, BEYOND", // 275 m
    "10gbase-sr, om1-2, 33 m, CONDITIONAL", // at its very reach: no patch cord fits
    "10gbase-sr, om1-2, 40 m, BEYOND", // 33 m
    "10gbase-lrm, om1-2, 40 m, WITHIN", // 0.040·1.5 + 1.5 = 1.56 ≤ 1.9
    "10gbase-sr, om2-2, 82 m, CONDITIONAL",
    "10gbase-sr, om2-2, 83 m, BEYOND", // 82 m
    "10gbase-sr, om2-2, 72 m, WITHIN", // 10 m left for cords
    "10gbase-sr, om2-2, 73 m, CONDITIONAL", // 9 m left
    "25gbase-sr, om2-2, 1 m, BEYOND", // OM2 is not in clause 112
    "10gbase-lr, os2-2, 2000 m, WITHIN", // 1.0 + 1.5 = 2.5 ≤ 6.2
    "10gbase-lr, om4-2, 10 m, BEYOND", // multimode
    "10gbase-sr, os2-2, 10 m, BEYOND", // single-mode
    "1000base-lx, om3-2, 90 m, CONDITIONAL", // mode-conditioning cords
    "1000base-lx, os1a-2, 120 m, WITHIN", // 0.12 + 1.5 = 1.62 ≤ 4.57
    "25gbase-sr, om5-2, 90 m, WITHIN"
  })
  void theVerdictKeepsBothSidesOfEachLimit(
      String name, String cable, String length, Verdict verdict) {
    assertEquals(verdict, application(name, FibreJobs.run("r", cable, length), "").verdict());
  }

  @Test
  void fourConnectorsFailByLossWhatLengthAllows() {
    // 0.060·3.0 + 4·0.75 = 3.18 dB over OM3
    String run = FibreJobs.run("r", "om3-2", "60 m");
    String joints = FibreJobs.joints(4, 0);
    Assessment tenGigabit = application("10gbase-sr", run, joints);
    Assessment gigabit = application("1000base-sx", run, joints);

    assertEquals(Verdict.BEYOND, tenGigabit.verdict());
    assertDecibels(3.18, tenGigabit.value());
    assertDecibels(-0.58, tenGigabit.margin()); // 2.6 − 3.18
    assertEquals("fibre.short.loss", firstWords(tenGigabit));
    assertTrue(PhrasesOf.keys(tenGigabit).contains("fibre.limit.joints")); // 3.0 > 1.5
    assertEquals(Verdict.BEYOND, application("25gbase-sr", run, joints).verdict());
    assertEquals(Verdict.WITHIN, gigabit.verdict());
    assertDecibels(0.38, gigabit.margin()); // 3.56 − 3.18
  }

  @Test
  void anEightFibreLinkAtItsExactReachFailsByLoss() {
    // OM4, 150 m, two connectors, two splices: 0.45 + 1.5 + 0.6 = 2.55 dB
    String run = FibreJobs.run("r", "om4-8", "150 m");
    Assessment parallel = application("40gbase-sr4", run, FibreJobs.joints(2, 2));
    Assessment tenGigabit = application("10gbase-sr", run, FibreJobs.joints(2, 2));

    assertEquals(Verdict.BEYOND, parallel.verdict());
    assertDecibels(2.55, parallel.value());
    assertDecibels(1.5, parallel.limit());
    assertFalse(PhrasesOf.keys(parallel).contains("fibre.short.length"));
    assertEquals(Verdict.WITHIN, tenGigabit.verdict());
    assertDecibels(0.35, tenGigabit.margin()); // 2.9 − 2.55
  }

  @Test
  void splicesOfABuriedLinkCountInItsBudget() {
    // OS2, 2 km: 2·0.5 + 2·0.75 + 3·0.3 = 3.40 dB
    String run = FibreJobs.run("r", "os2-2", "2 km");

    assertDecibels(3.40, application("10gbase-lr", run, FibreJobs.joints(2, 3)).value());
    assertDecibels(2.80, application("10gbase-lr", run, FibreJobs.joints(2, 3)).margin());
    assertEquals(Verdict.WITHIN, application("1000base-lx", run, FibreJobs.joints(2, 3)).verdict());
  }

  @ParameterizedTest(name = "{0} m: {1}, {2} dB left")
  @CsvSource({
    // 10GBASE-SR on OM3, 2.6 dB, two connectors and one splice leave 0.8 dB:
    // 228.57 m with 3.5 dB/km, 266.67 m with 3.0.
    "218, WITHIN, 0.146", // 2.6 − 1.8 − 0.218·3.0
    "228, CONDITIONAL, 0.116", // kept by both, but no 10 m of cords with 3.5 dB/km
    "229, CONDITIONAL, 0.113", // by 3.0 only: 0.8 − 0.229·3.5 = −0.0015
    "266, CONDITIONAL, 0.002", // by 3.0 only
    "267, BEYOND, -0.001" // by neither
  })
  void whereTheEditionsDifferTheVerdictIsConditionalAndNamesThem(
      double metres, Verdict verdict, double left) {
    Assessment result =
        application(
            "10gbase-sr", FibreJobs.run("r", "om3-2", metres + " m"), FibreJobs.joints(2, 1));

    assertEquals(verdict, result.verdict());
    assertEquals(left, ((Decibels) result.margin().orElseThrow()).inDecibels(), 1e-9);
    assertEquals(
        metres >= 229 && metres <= 266,
        PhrasesOf.keys(result).contains("fibre.limit.editions-differ"));
  }

  @Test
  void onSingleModeTheStricterEditionIsTheAmericanOne() {
    // 10GBASE-LR, 6.2 dB; five connectors and two splices 4.35 dB leave 1.85 dB:
    // 3.7 km with 0.5 dB/km, 4.625 km with 0.4. At 4 km: 4.35 + 1.6 = 5.95 by ISO.
    Assessment result =
        application("10gbase-lr", FibreJobs.run("r", "os2-2", "4 km"), FibreJobs.joints(5, 2));

    assertEquals(Verdict.CONDITIONAL, result.verdict());
    assertDecibels(5.95, result.value());
    assertDecibels(0.25, result.margin());
  }

  @Test
  void aLengthThatLeavesTheLeastShareIsTheOneReported() {
    // OM3, 95 m, eight fibres: 5 m of 100 m is 5 %; 1.9 − 1.785 = 0.115 dB is 6.1 %.
    Assessment result = application("40gbase-sr4", FibreJobs.run("r", "om3-8", "95 m"), "");

    assertMetres(5, result.margin());
    assertEquals("fibre.limit.length", firstWords(result));
    assertEquals(Verdict.CONDITIONAL, result.verdict()); // 5 m left for cords
    assertTrue(PhrasesOf.keys(result).contains("fibre.assume.cords-short"));
  }

  @Test
  void aFibreThatIsNotTerminatedIsJudgedAsOnceItIsAndOnlyConditionally() {
    Assessment result = application("10gbase-sr", FibreJobs.coiled("r", "om3-2", "90 m"), "");

    assertEquals(Verdict.CONDITIONAL, result.verdict());
    assertDecibels(0.83, result.margin());
    assertTrue(PhrasesOf.keys(result).contains("fibre.assume.once-terminated"));
    assertTrue(PhrasesOf.keys(result).contains("fibre.assume.connectors.usual.other"));
  }

  @Test
  void aFibreOfUnknownFinishIsNotTakenForTerminated() {
    Assessment result =
        application("10gbase-sr", FibreJobs.run("r", "om3-2", "90 m", "unknown", "dark"), "");

    assertEquals(Verdict.CONDITIONAL, result.verdict());
    assertTrue(PhrasesOf.keys(result).contains("fibre.assume.finish-unknown"));
  }

  @Test
  void plannedConnectorsCountForAFibreThatIsNotTerminatedAndMadeOnesForOneThatIs() {
    String fibres =
        "fibres: [{id: f, run: r, connectors_made: 3, connectors_planned: 4, splices_made: 1}]\n";
    Assessment coiled = application("1000base-sx", FibreJobs.coiled("r", "om3-2", "60 m"), fibres);
    Assessment made = application("1000base-sx", FibreJobs.run("r", "om3-2", "60 m"), fibres);

    assertDecibels(3.48, coiled.value()); // 0.18 + 4·0.75 + 0.3: the splice stays
    assertDecibels(2.73, made.value()); // 0.18 + 3·0.75 + 0.3
  }

  @Test
  void plannedFiguresServeWhereThoseOfATerminatedFibreAreNotStated() {
    String fibres = "fibres: [{id: f, run: r, connectors_planned: 4, splices_planned: 1}]\n";

    assertDecibels(
        3.48, application("1000base-sx", FibreJobs.run("r", "om3-2", "60 m"), fibres).value());
  }

  @ParameterizedTest
  @CsvSource({"damaged, fibre.limit.damaged", "abandoned, fibre.limit.abandoned"})
  void aDamagedOrAbandonedRunCarriesNothing(String condition, String words) {
    List<Assessment> all =
        FibreJobs.assess(FibreJobs.run("r", "om3-2", "10 m", "terminated", condition));

    List<Assessment> applications =
        all.stream().filter(a -> a.topic().startsWith("fibre.application.")).toList();
    assertEquals(13, applications.size());
    for (Assessment application : applications) {
      assertEquals(Verdict.BEYOND, application.verdict());
      assertEquals(words, application.limitedBy().orElseThrow().key());
    }
    assertTrue(all.stream().allMatch(a -> a.topic().matches("fibre\\.(application|otdr)\\..*")));
  }

  @Test
  void whatTheRecordLacksIsNamedAndNothingIsClaimed() {
    Assessment noClass = application("10gbase-sr", FibreJobs.run("r", "plain", "10 m"), "");
    Assessment noLength = application("10gbase-sr", FibreJobs.run("r", "om3-2", ""), "");
    Assessment noCount = application("10gbase-sr", FibreJobs.run("r", "om3-uncounted", "10 m"), "");

    assertEquals("fibre.missing.class", missing(noClass));
    assertEquals("fibre.missing.length", missing(noLength));
    assertEquals("fibre.missing.count", missing(noCount));
  }

  @Test
  void tooFewFibresNeedNoAssumptions() {
    Assessment result = application("40gbase-sr4", FibreJobs.coiled("r", "om3-2", "90 m"), "");

    assertEquals(List.of(), result.assumptions());
  }

  @Test
  void aPairFailsAnEightFibreApplicationEvenWithoutItsLength() {
    Assessment result = application("40gbase-sr4", FibreJobs.run("r", "om3-2", ""), "");

    assertEquals(Verdict.BEYOND, result.verdict());
    assertEquals("fibre.short.fibres", result.limitedBy().orElseThrow().key());
  }

  @Test
  void aLengthMeasuredInATestStandsInForOneNotRecorded() {
    String tests =
        """
        tests:
          - {id: t2, run: r, date: 2026-02-02, kind: length, result: pass, length: 90 m}
          - {id: t1, run: r, date: 2026-01-01, kind: length, result: pass, length: 50 m}
        """;
    Assessment result = application("10gbase-sr", FibreJobs.run("r", "om3-2", ""), tests);

    assertDecibels(1.77, result.value());
    assertTrue(PhrasesOf.keys(result).contains("fibre.assume.length-by-test"));
  }

  @Test
  void aTestWithoutALengthGivesNone() {
    String tests = "tests: [{id: t, run: r, date: 2026-01-01, kind: toning, result: pass}]\n";

    assertEquals(
        "fibre.missing.length",
        missing(application("10gbase-sr", FibreJobs.run("r", "om3-2", ""), tests)));
  }

  @Test
  void aMeasuredLengthIsNoEstimate() {
    String run = FibreJobs.run("r", "om3-2", "90 m, length_by: foot_marks");

    assertFalse(
        PhrasesOf.keys(application("10gbase-sr", run, ""))
            .contains("fibre.assume.length-estimated"));
  }

  @Test
  void aLinkAtItsExactReachIsWithinItInWords() {
    Assessment length = application("10gbase-sr", FibreJobs.run("r", "om1-2", "33 m"), "");
    // 2 · 0.75 + 0.1 · 3.0 + 0 · 0.3 = 1.8 dB against 1.9; at 100 m of 100 m the length decides
    Assessment parallel = application("40gbase-sr4", FibreJobs.run("r", "om3-8", "100 m"), "");

    assertEquals("fibre.limit.length", firstWords(length));
    assertMetres(0, length.margin());
    assertEquals("fibre.limit.length", firstWords(parallel));
    assertTrue(PhrasesOf.keys(parallel).contains("fibre.limit.fibres"));
  }

  @Test
  void aLossAtItsExactLimitIsWithinItInWords() {
    // OM2 has 3.5 dB/km in both editions: 2 · 0.75 + 5 · 0.3 + 0.160 · 3.5 = 3.56
    Assessment result =
        application("1000base-sx", FibreJobs.run("r", "om2-2", "160 m"), FibreJobs.joints(2, 5));

    assertEquals("fibre.limit.loss", firstWords(result));
    assertEquals(0, ((Decibels) result.margin().orElseThrow()).inDecibels(), 1e-9);
    assertEquals(Verdict.CONDITIONAL, result.verdict()); // no cord fits
  }

  @Test
  void splicesPlannedStandInPlaceOfThoseMadeUntilTheFibreIsTerminated() {
    String fibres = "fibres: [{id: f, run: r, splices_made: 1, splices_planned: 2}]\n";

    // 0.18 + 1.5 + 2 · 0.3, and 0.18 + 1.5 + 0.3
    assertDecibels(
        2.28, application("1000base-sx", FibreJobs.coiled("r", "om3-2", "60 m"), fibres).value());
    assertDecibels(
        1.98, application("1000base-sx", FibreJobs.run("r", "om3-2", "60 m"), fibres).value());
  }

  @Test
  void jointsAreBlamedOnlyForALossThatFails() {
    Assessment result =
        application("1000base-sx", FibreJobs.run("r", "om2-2", "545 m"), FibreJobs.joints(1, 3));
    // 0.75 + 0.9 = 1.65 > 1.5 allotted: 1.9075 + 1.65 = 3.5575 ≤ 3.56
    Assessment blamed =
        application("1000base-sx", FibreJobs.run("r", "om2-2", "549 m"), FibreJobs.joints(1, 3));

    assertFalse(PhrasesOf.keys(result).contains("fibre.limit.joints"));
    assertEquals(Verdict.BEYOND, blamed.verdict()); // 1.9215 + 1.65 = 3.5715
    assertTrue(PhrasesOf.keys(blamed).contains("fibre.limit.joints"));
  }

  @Test
  void anEstimatedLengthIsCalledOne() {
    String run = FibreJobs.run("r", "om3-2", "90 m, length_by: estimate");

    assertTrue(
        PhrasesOf.keys(application("10gbase-sr", run, ""))
            .contains("fibre.assume.length-estimated"));
  }

  @Test
  void fourFibresAreTwoDuplexLinksNotOneOfEightFibres() {
    String run = FibreJobs.run("r", "om3-4", "60 m");

    assertTrue(PhrasesOf.keys(application("10gbase-sr", run, "")).contains("fibre.assume.links"));
    assertFalse(
        PhrasesOf.keys(application("10gbase-sr", FibreJobs.run("r", "om3-2", "60 m"), ""))
            .contains("fibre.assume.links"));
    assertEquals(Verdict.BEYOND, application("40gbase-sr4", run, "").verdict());
  }

  @Test
  void om1SaysHowFarItsOlderKindReaches() {
    Assessment result = application("10gbase-sr", FibreJobs.run("r", "om1-2", "20 m"), "");

    // 26 m on 160 MHz·km: a page that quotes ANSI/TIA-568.3-D
    assertEquals(
        Optional.of(Length.metres(26)),
        PhrasesOf.argument(result, "fibre.assume.bandwidth", "reach"));
  }

  @Test
  void applicationsOfTheOtherKindOfFibreSayWhichKindTheyNeed() {
    String multimode = FibreJobs.run("r", "om3-2", "10 m");
    String singleMode = FibreJobs.run("r", "os2-2", "10 m");

    assertEquals(
        "fibre.limit.needs-single-mode",
        application("10gbase-lr", multimode, "").limitedBy().orElseThrow().key());
    assertEquals(
        "fibre.limit.needs-multimode",
        application("10gbase-sr", singleMode, "").limitedBy().orElseThrow().key());
    assertEquals(
        Optional.of("OM3"),
        PhrasesOf.argument(
            application("25gbase-sr", FibreJobs.run("r", "om1-2", "10 m"), ""),
            "fibre.limit.needs-class",
            "least"));
  }

  private static Assessment application(String name, String run, String rest) {
    return FibreJobs.only(FibreJobs.assess(FibreJobs.job(run, rest)), "fibre.application." + name);
  }

  private static String firstWords(Assessment assessment) {
    return PhrasesOf.first(assessment.limitedBy().orElseThrow()).key();
  }

  private static String missing(Assessment assessment) {
    assertEquals(Verdict.NOT_STATED, assessment.verdict());
    assertEquals(1, assessment.missing().size());
    return assessment.missing().get(0).key();
  }

  private static void assertDecibels(double expected, Optional<Quantity> actual) {
    assertEquals(expected, ((Decibels) actual.orElseThrow()).inDecibels(), 1e-9);
  }

  private static void assertMetres(double expected, Optional<Quantity> actual) {
    assertEquals(expected, ((Length) actual.orElseThrow()).inMetres(), 1e-9);
  }
}
