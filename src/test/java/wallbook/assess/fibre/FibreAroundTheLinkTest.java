package wallbook.assess.fibre;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.PhrasesOf;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.PowerLevel;
import wallbook.quantity.Quantity;

/** Budgets, provider networks, joints with other fibre, reflectometer, bends. */
class FibreAroundTheLinkTest {
  @Test
  void theBudgetOfEachEditionIsGivenAndNamed() {
    List<Assessment> all = FibreJobs.assess(FibreJobs.run("r", "om3-2", "90 m"));

    assertDecibels(1.770, FibreJobs.only(all, "fibre.budget.850.tia").value()); // 0.27 + 1.5
    assertDecibels(1.815, FibreJobs.only(all, "fibre.budget.850.iso").value()); // 0.315 + 1.5
    assertDecibels(1.635, FibreJobs.only(all, "fibre.budget.1300.tia").value()); // 0.135 + 1.5
    assertDecibels(1.27, FibreJobs.only(all, "fibre.expected.850").value()); // 0.27 + 2·0.5
    assertEquals(
        Optional.of(Decibels.decibels(1.5)),
        PhrasesOf.argument(
            FibreJobs.only(all, "fibre.budget.850.tia"), "fibre.budget.parts", "joints"));
    assertTrue(
        PhrasesOf.keys(FibreJobs.only(all, "fibre.budget.850.iso")).contains("fibre.edition.iso"));
  }

  @Test
  void singleModeIsBudgetedAtItsOwnWavelengths() {
    List<Assessment> all = FibreJobs.assess(FibreJobs.run("r", "os1a-2", "120 m"));

    assertDecibels(1.62, FibreJobs.only(all, "fibre.budget.1310.tia").value()); // 0.12 + 1.5
    assertDecibels(1.62, FibreJobs.only(all, "fibre.budget.1550.tia").value());
    assertDecibels(1.024, FibreJobs.only(all, "fibre.expected.1550").value()); // 0.12·0.2 + 1.0
  }

  @Test
  void withoutALengthThereIsNoBudget() {
    Assessment result =
        FibreJobs.only(FibreJobs.assess(FibreJobs.run("r", "om3-2", "")), "fibre.budget.850.tia");

    assertEquals(Verdict.NOT_STATED, result.verdict());
  }

  @ParameterizedTest(name = "{0}: {1} to {2} dB left, {3} ways")
  @CsvSource({
    // 100 m of OS2, two connectors: 0.05 + 1.5 = 1.55 dB of the published path loss limits
    "b-plus, 11.45, 26.45, 64", // 13 − 1.55, 28 − 1.55; 21.5 ≤ 26.45
    "c-plus, 15.45, 30.45, 64",
    "n1, 12.45, 27.45, 64",
    "n2, 14.45, 29.45, 64",
    "e1, 16.45, 31.45, 64",
    "e2, 18.45, 33.45, 64"
  })
  void whatTheHouseLeavesToTheProviderHasALeastAndAMost(
      String network, double least, double most, int ways) {
    Assessment result =
        FibreJobs.only(
            FibreJobs.assess(FibreJobs.run("r", "os2-2", "100 m")), "fibre.pon." + network);

    assertEquals(Verdict.CONDITIONAL, result.verdict());
    assertDecibels(1.55, result.value());
    assertDecibels(most, result.margin());
    assertDecibels(most, quantity(result, "fibre.pon.left", "most"));
    assertDecibels(least, quantity(result, "fibre.pon.left", "least"));
    assertEquals(
        Optional.of(Count.of(ways)), PhrasesOf.argument(result, "fibre.pon.splitter", "ways"));
  }

  @ParameterizedTest(name = "{0} connectors: {1}")
  @CsvSource({
    "18, CONDITIONAL, fibre.pon.left-any", // 13.5 + 0.05 = 13.55 > 13: no least loss remains
    "17, CONDITIONAL, fibre.pon.left", // 12.75 + 0.05 = 12.80 < 13
    "37, CONDITIONAL, fibre.pon.left-any", // 27.75 + 0.05 = 27.80 ≤ 28; no splitter fits
    "38, BEYOND, fibre.short.loss" // 28.5 + 0.05 > 28
  })
  void aHouseThatTakesTheWholePathLossIsBeyond(int connectors, Verdict verdict, String words) {
    Assessment result =
        FibreJobs.only(
            FibreJobs.assess(
                FibreJobs.job(
                    FibreJobs.run("r", "os2-2", "100 m"), FibreJobs.joints(connectors, 0))),
            "fibre.pon.b-plus");

    assertEquals(verdict, result.verdict());
    assertEquals(words, PhrasesOf.first(result.limitedBy().orElseThrow()).key());
  }

  @Test
  void theLightThatTheHomeUnitBearsIsTold() {
    Assessment result =
        FibreJobs.only(FibreJobs.assess(FibreJobs.run("r", "os2-2", "100 m")), "fibre.pon.b-plus");

    // ITU-T G.984.2 class B+: −27 dBm to −8 dBm
    assertEquals(
        Optional.of(PowerLevel.dbm(-27)),
        PhrasesOf.argument(result, "fibre.assume.pon-levels", "sensitivity"));
    assertEquals(
        Optional.of(PowerLevel.dbm(-8)),
        PhrasesOf.argument(result, "fibre.assume.pon-levels", "overload"));
  }

  @Test
  void multimodeIsNotAskedAboutProviderNetworksAndADamagedFeedCarriesNone() {
    assertTrue(
        FibreJobs.assess(FibreJobs.run("r", "om3-2", "10 m")).stream()
            .noneMatch(a -> a.topic().startsWith("fibre.pon.")));
    assertEquals(
        Verdict.BEYOND,
        FibreJobs.only(
                FibreJobs.assess(FibreJobs.run("r", "os2-2", "10 m", "terminated", "damaged")),
                "fibre.pon.n1")
            .verdict());
    assertEquals(
        Verdict.NOT_STATED,
        FibreJobs.only(FibreJobs.assess(FibreJobs.run("r", "os2-2", "")), "fibre.pon.n1")
            .verdict());
  }

  @Test
  void multimodeDoesNotJoinTheProvidersSingleMode() {
    Assessment result =
        FibreJobs.only(FibreJobs.assess(FibreJobs.run("r", "om3-2", "10 m")), "fibre.join.os2");

    assertEquals(Verdict.BEYOND, result.verdict());
    // 20·log10(50/9) = 14.89 dB by area, 20·log10(0.20/0.14) = 3.10 dB by aperture
    assertEquals(17.99, decibels(result.value()), 0.005);
    assertEquals(14.89, decibels(quantity(result, "fibre.limit.cores", "area")), 0.005);
    assertEquals(-17.24, decibels(result.margin()), 0.005); // 0.75 − 17.99
    assertTrue(PhrasesOf.keys(result).contains("fibre.assume.media-conversion"));
  }

  @Test
  void fibresOfOtherCoresThatMeetAtAHeadDoNotJoin() {
    List<Assessment> all =
        FibreJobs.assess(FibreJobs.run("a", "om1-2", "10 m") + FibreJobs.run("b", "om3-2", "10 m"));

    List<Assessment> joins =
        all.stream().filter(a -> a.topic().matches("fibre\\.join\\.om.")).toList();
    assertEquals(List.of("fibre.join.om3", "fibre.join.om1"), topics(joins));
    for (Assessment join : joins) {
      assertEquals(Verdict.BEYOND, join.verdict());
      // 20·log10(62.5/50) + 20·log10(0.275/0.20) = 1.94 + 2.77, whichever is asked
      assertEquals(4.70, decibels(join.value()), 0.01);
      assertTrue(PhrasesOf.keys(join).stream().noneMatch(k -> k.endsWith("conversion")));
    }
  }

  @ParameterizedTest(name = "{0} and {1}: judged as {2}")
  @CsvSource({
    "om3-2, om4-2, OM3", // laser bandwidth 2000 against 4700
    "om2-2, om3-2, OM2", // 500 against 2000
    "om4-2, om5-2, OM4" // the same at 850 nm; OM5 is specified beyond
  })
  void fibresOfOneCoreJoinAsTheLowerClass(String one, String other, String lower) {
    List<Assessment> all =
        FibreJobs.assess(FibreJobs.run("a", one, "10 m") + FibreJobs.run("b", other, "10 m"));

    List<Assessment> joins =
        all.stream().filter(a -> a.topic().matches("fibre\\.join\\.om.")).toList();
    assertEquals(2, joins.size());
    for (Assessment join : joins) {
      assertEquals(Verdict.CONDITIONAL, join.verdict());
      assertEquals(
          Optional.of(lower), PhrasesOf.argument(join, "fibre.limit.lower-class", "lower"));
    }
  }

  @Test
  void fibresThatNeverMeetAreNotAskedAbout() {
    String elsewhere =
        "  - {id: b, label: b, cable: om4-2, from: {head: demarc, finish: terminated}, to: {place: den-1, finish: coiled}, condition: dark}\n";
    List<Assessment> all = FibreJobs.assess(FibreJobs.run("a", "om3-2", "10 m") + elsewhere);

    assertTrue(all.stream().noneMatch(a -> a.topic().matches("fibre\\.join\\.om.")));
  }

  @Test
  void singleModeIsAskedAboutTheMultimodeItMeets() {
    List<Assessment> all =
        FibreJobs.assess(
            FibreJobs.run("a", "os2-2", "10 m")
                + FibreJobs.run("b", "om3-2", "10 m")
                + FibreJobs.run("c", "os1a-2", "10 m"));

    assertEquals(
        List.of("fibre.join.om3"),
        topics(
            all.stream()
                .filter(a -> a.subject().equals("a") && a.topic().startsWith("fibre.join."))
                .toList()));
  }

  @Test
  void aPulseOverTheRunReturnsAfterItsRoundTrip() {
    List<Assessment> all = FibreJobs.assess(FibreJobs.run("r", "om3-2", "90 m"));
    Assessment result = FibreJobs.only(all, "fibre.otdr.850");

    // 2·90·1.483/299 792 458 s
    assertEquals(890.4, ((Delay) result.value().orElseThrow()).inNanoseconds(), 0.5);
    // 299 792 458·100e-9/(2·1.483) = 10.11 m
    assertEquals(
        10.11,
        ((Length) quantity(result, "fibre.assume.otdr-scale", "length").orElseThrow()).inMetres(),
        0.005);
    assertEquals(
        Verdict.NOT_STATED,
        FibreJobs.only(FibreJobs.assess(FibreJobs.run("r", "om3-2", "")), "fibre.otdr.1300")
            .verdict());
  }

  @ParameterizedTest(name = "{0}: {1} mm at rest, {2} mm under load")
  @CsvSource({
    "om1-2, 25, 50", // TIA-568-B.3: premises cable of 2 or 4 fibres
    "om3-4, 25, 50", // the same
    "om3-8, 50, 75", // TIA-568-B.3: 10 and 15 diameters of 5 mm
    "om3-2-outdoor, 66.04, 132.08", // 10 and 20 diameters of 0.26 in
    "om4-12, 66.04, 99.06", // 10 and 15 diameters of 0.26 in
    "om3-2, 25.4, 50" // data sheet of 1 in at rest
  })
  void bendsAreNoTighterThanPublished(String cable, double atRestMm, double underLoadMm) {
    List<Assessment> all = FibreJobs.assess(FibreJobs.run("r", cable, "10 m"));

    assertEquals(
        atRestMm,
        ((Length) FibreJobs.only(all, "fibre.bend.at-rest").value().orElseThrow()).inMillimetres(),
        1e-9);
    assertEquals(
        underLoadMm,
        ((Length) FibreJobs.only(all, "fibre.bend.under-load").value().orElseThrow())
            .inMillimetres(),
        1e-9);
  }

  @Test
  void aCableWithoutDiameterHasNoRuleOfDiameters() {
    Assessment result =
        FibreJobs.only(
            FibreJobs.assess(FibreJobs.run("r", "om4-8", "10 m")), "fibre.bend.under-load");

    assertEquals(Verdict.NOT_STATED, result.verdict());
    assertEquals("fibre.missing.diameter", result.missing().get(0).key());
  }

  @ParameterizedTest(name = "conduit bends of {0} in and 6 in: {1}")
  @CsvSource({"4, WITHIN", "1.97, WITHIN", "1.96, BEYOND"})
  void theTightestBendOfTheConduitIsHeldAgainstTheCable(double inches, Verdict verdict) {
    // 50 mm under load is 1.969 in
    String run = FibreJobs.run("r", "om1-2", "10 m, conduits: [c]");
    String conduit =
        """
        conduits:
          - id: c
            label: C
            name: Conduit
            type: ent
            trade_size: "1"
            from: {head: rack}
            to: {place: den-1}
            path: [{bend: 90 deg, radius: 6 in}, {straight: 10 ft}, {bend: 90 deg, radius: %s in}]
            contents: [r]
            pull_string: both_ends
            condition: clear
        """
            .formatted(inches);
    Assessment result =
        FibreJobs.only(FibreJobs.assess(FibreJobs.job(run, conduit)), "fibre.bend.under-load");

    assertEquals(verdict, result.verdict());
    assertEquals(
        inches * 25.4 - 50, ((Length) result.margin().orElseThrow()).inMillimetres(), 1e-9);
  }

  @Test
  void aBendExactlyAsTightAsAllowedIsWithin() {
    // 50 mm under load: TIA-568-B.3
    Assessment result =
        FibreJobs.only(
            FibreJobs.assess(
                FibreJobs.job(
                    FibreJobs.run("r", "om1-2", "10 m, conduits: [c]"),
                    "conduits: [{id: c, label: C, name: Conduit, type: ent, trade_size: '1', from: {head: rack}, to: {place: den-1}, path: [{bend: 90 deg, radius: 50 mm}], contents: [r], pull_string: none, condition: clear}]\n")),
            "fibre.bend.under-load");

    assertEquals(Verdict.WITHIN, result.verdict());
    assertEquals("fibre.limit.bend", result.limitedBy().orElseThrow().key());
  }

  @ParameterizedTest(name = "{0} dB: {1}")
  @CsvSource({"4.2, 0", "4.3, 2", "10.7, 8", "13.8, 8", "100, 64"}) // a splitter's data sheet
  void theLargestSplitterIsTheLastThatFits(double decibels, int ways) {
    assertEquals(
        ways == 0 ? Optional.empty() : Optional.of(Count.of(ways)),
        new OpticalSplitters(Jobs.TABLES).largestWithin(Decibels.decibels(decibels)));
  }

  @Test
  void theCoresThatMeetAreNamed() {
    Assessment result =
        FibreJobs.only(FibreJobs.assess(FibreJobs.run("r", "om3-2", "10 m")), "fibre.join.os2");

    assertEquals(Optional.of("50"), PhrasesOf.argument(result, "fibre.limit.cores", "from"));
    assertEquals(Optional.of("9"), PhrasesOf.argument(result, "fibre.limit.cores", "into"));
  }

  @Test
  void budgetsAndProviderNetworksSayWhatTheyRestOn() {
    List<Assessment> all = FibreJobs.assess(FibreJobs.coiled("r", "os2-2", "10 m"));

    for (String topic : List.of("fibre.budget.1310.tia", "fibre.pon.b-plus")) {
      assertTrue(
          PhrasesOf.keys(FibreJobs.only(all, topic))
              .containsAll(
                  List.of(
                      "fibre.assume.once-terminated",
                      "fibre.assume.connectors.usual.other",
                      "fibre.assume.splices.usual.other")),
          topic);
    }
  }

  @Test
  void otherMediaAreNotAssessed() {
    assertTrue(FibreJobs.assess(FibreJobs.run("r", "cat6", "10 m")).isEmpty());
  }

  private static List<String> topics(List<Assessment> all) {
    return all.stream().map(Assessment::topic).toList();
  }

  private static Optional<Quantity> quantity(Assessment result, String key, String name) {
    return PhrasesOf.argument(result, key, name).map(Quantity.class::cast);
  }

  private static double decibels(Optional<Quantity> quantity) {
    return ((Decibels) quantity.orElseThrow()).inDecibels();
  }

  private static void assertDecibels(double expected, Optional<Quantity> actual) {
    assertEquals(expected, decibels(actual), 1e-9);
  }
}
