package wallbook.assess.coax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.PhrasesOf;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.SignalLevel;
import wallbook.reference.Standing;

/**
 * What coaxial runs lose, end to end from a record. Attenuation as in {@link CoaxCheckValuesTest}.
 */
class CoaxOverRunsTest {
  @Test
  void everyUseIsGivenItsLossAndNoVerdict() {
    List<Assessment> all = CoaxJobs.assess(CoaxJobs.run("series-6", "length: 100 ft"));
    List<Assessment> uses = all.stream().filter(a -> a.topic().startsWith("coax.use.")).toList();

    assertEquals(15, uses.size());
    for (Assessment use : uses) {
      boolean known = !use.topic().equals("coax.use.repeater.3700-3980"); // above 3000 MHz
      assertEquals(known ? Verdict.INFORMATION : Verdict.NOT_STATED, use.verdict(), use.topic());
      assertTrue(use.margin().isEmpty());
      assertEquals(Standing.FROM_MEMORY, use.source().standing()); // the weakest figure decides
    }
  }

  @ParameterizedTest(name = "{0}, 100 ft: {2} dB within {3}")
  @CsvSource({
    // An antenna maker's article, typical series 6, 100 ft: 9.7 dB at 2150 MHz
    "series-6, satellite.if, 9.7, 0.3",
    // and 4.5 at 473 MHz, 5.6 at 695 MHz: between them 5.1 at 600 MHz by ANSI/SCTE 74
    "series-6, off-air.uhf, 5.13, 0.05",
    // ANSI/SCTE 74 at 1000 MHz: 8.12 and 4.35
    "series-59, cable-tv.forward, 8.12, 0.02",
    "series-11, cable-tv.forward, 4.35, 0.02"
  })
  void theLossIsThatOfTheBandsUpperEdge(
      String cable, String band, double decibels, double tolerance) {
    Assessment use = use(CoaxJobs.run(cable, "length: 100 ft"), band);

    assertEquals(decibels, decibels(use), tolerance);
  }

  @Test
  void tiltIsTheDifferenceOfTheEdges() {
    List<Assessment> all = CoaxJobs.assess(CoaxJobs.run("series-6", "length: 100 ft"));
    Assessment use = CoaxJobs.only(all, "coax.use.cable-tv.forward");
    Decibels low = (Decibels) argument(use, "coax.band.edges", "lowLoss");

    // ANSI/SCTE 74: 1.60 dB at 55 MHz, 6.55 at 1000; the band is 54 to 1002 MHz
    assertEquals(1.59, low.inDecibels(), 0.02);
    assertEquals(
        decibels(use) - low.inDecibels(),
        decibels(CoaxJobs.only(all, "coax.tilt.cable-tv.forward")),
        1e-9);
    assertEquals(4.96, decibels(CoaxJobs.only(all, "coax.tilt.cable-tv.forward")), 0.03);
    assertTrue(all.stream().noneMatch(a -> a.topic().equals("coax.tilt.off-air.uhf")));
  }

  @Test
  void heatAddsToTheLoss() {
    // + 0.2 % per kelvin from 20 °C: 45 °C is 1.05 times
    double cool = decibels(use(CoaxJobs.run("series-6", "length: 100 ft"), "satellite.if"));
    Assessment hot =
        use(CoaxJobs.run("series-6", "length: 100 ft, hottest: 45 °C"), "satellite.if");

    assertEquals(1.05, decibels(hot) / cool, 1e-9);
    assertTrue(PhrasesOf.keys(hot).contains("coax.assume.temperature"));
  }

  @Test
  void anAtticRunTakesTheAtticsHeatAndAnotherDoesNot() {
    String attic = "length: 100 ft, environments: [attic]";
    double cool = decibels(use(CoaxJobs.run("series-6", "length: 100 ft"), "satellite.if"));

    assertEquals(1.06, atticAt50(attic) / cool, 1e-9); // 30 K above 20 °C
    assertEquals(1.0, atticAt50("length: 100 ft, environments: [in_wall]") / cool, 1e-9);
    assertEquals(
        1.0,
        decibels(use(CoaxJobs.run("series-6", attic), "satellite.if")) / cool,
        1e-9); // no attic temperature recorded
  }

  @ParameterizedTest(name = "{0}: {1} dB more")
  @CsvSource({
    "S4, 7.0, coax.assume.splitter-usual", // printed on four-way splitters
    "S8, 12.0, coax.assume.splitter" // by the record, not the usual 11 dB
  })
  void aRecordedSplitterAddsItsLoss(String panel, double more, String words) {
    String from = "{head: rack, panel: %s, port: 1, finish: terminated}".formatted(panel);
    Assessment plain = use(CoaxJobs.run("series-6", "length: 75 ft"), "cable-tv.forward");
    Assessment split =
        use(CoaxJobs.run("series-6", from, "den-tv", "length: 75 ft"), "cable-tv.forward");

    assertEquals(more, decibels(split) - decibels(plain), 1e-9);
    assertTrue(PhrasesOf.keys(split).contains(words));
  }

  @Test
  void aSplitterOfUnknownLossLeavesTheUseOpen() {
    String from = "{head: rack, panel: S5, port: 1, finish: terminated}";
    List<Assessment> all =
        CoaxJobs.assess(CoaxJobs.run("series-6", from, "den-tv", "length: 75 ft"));
    Assessment use = CoaxJobs.only(all, "coax.use.off-air.uhf");

    assertEquals(Verdict.NOT_STATED, use.verdict());
    assertEquals("coax.missing.splitter-loss", use.missing().get(0).key());
    assertEquals(Verdict.WITHIN, CoaxJobs.only(all, "coax.length").verdict());
  }

  @Test
  void whatRemainsBehindFurtherSplittersIsTold() {
    Assessment use = use(CoaxJobs.run("series-6", "length: 75 ft"), "cable-tv.forward");
    Assessment satellite = use(CoaxJobs.run("series-6", "length: 75 ft"), "satellite.if");

    // 0.75 · 6.55 = 4.91 dB at 1000 MHz; + 3.5 = 8.41 behind two ways, + 7.0 = 11.91 behind four
    assertEquals(8.41, behind(use, 2), 0.01);
    assertEquals(11.91, behind(use, 4), 0.01);
    assertFalse(PhrasesOf.keys(satellite).contains("coax.band.behind"));
  }

  @Test
  void aModemNeedsItsLevelAndTheLossBeforeIt() {
    List<Assessment> all = CoaxJobs.assess(CoaxJobs.run("series-6", "length: 100 ft"));
    Assessment level = CoaxJobs.only(all, "coax.level.cable-tv.forward");
    double loss = decibels(CoaxJobs.only(all, "coax.use.cable-tv.forward"));

    // A modem bears −15 to +15 dBmV, −7 to +7 is aimed for (from memory)
    assertEquals(-15 + loss, ((SignalLevel) level.value().orElseThrow()).inDbmv(), 1e-9);
    assertEquals(
        -7 + loss, ((SignalLevel) argument(level, "coax.band.level", "aimLeast")).inDbmv(), 1e-9);
    assertEquals(
        7 + loss, ((SignalLevel) argument(level, "coax.band.level", "aimMost")).inDbmv(), 1e-9);
    assertTrue(all.stream().noneMatch(a -> a.topic().equals("coax.level.off-air.uhf")));
  }

  @Test
  void fiftyOhmCableServesTheRepeaterWithItsConnectors() {
    // usual table at 1800 and 2000 MHz: 5.7 and 6.0 dB/100 ft at 25 °C; at 2200 MHz some 6.3;
    // 40 ft: 0.4 · 6.3 = 2.52, two connectors of 0.1
    Assessment use = use(CoaxJobs.run("low-loss-405", "length: 40 ft"), "repeater.1710-2200");

    assertEquals(2.72, decibels(use), 0.02);
    assertTrue(PhrasesOf.keys(use).contains("coax.assume.connectors"));
    assertTrue(PhrasesOf.keys(use).contains("coax.assume.print"));
    assertFalse(PhrasesOf.keys(use).contains("coax.assume.mismatch"));
  }

  @Test
  void connectorsAreNotCountedAboveTheirAllowance() {
    Assessment use = use(CoaxJobs.run("low-loss-405", "length: 40 ft"), "repeater.3700-3980");

    assertTrue(PhrasesOf.keys(use).contains("coax.assume.connectors-not-counted"));
  }

  @Test
  void aStepOfImpedanceAddsItsLossAtBothEnds() {
    Assessment use = use(CoaxJobs.run("series-6", "length: 40 ft"), "repeater.617-698");
    // ANSI/SCTE 74: 5.10 dB/100 ft at 600 MHz, 5.65 at 750; over 40 ft, and 2 · 0.177 dB:
    // √698 = 26.420, √600 = 24.495, √750 = 27.386: 5.10 + 0.6659·0.55 = 5.466; 2.186 + 0.355
    assertEquals(2.541, decibels(use), 0.002);
    assertTrue(PhrasesOf.keys(use).contains("coax.assume.mismatch"));
  }

  @ParameterizedTest(name = "{0} on {1}: not stated for want of the attenuation")
  @CsvSource({
    "satellite.if, series-59", // known to 1002 MHz
    "satellite.if, series-11",
    "repeater.3700-3980, series-6", // known to 3000 MHz
    "cable-tv.return, low-loss-405" // known from 30 MHz
  })
  void beyondTheCablesTableNothingIsStated(String band, String cable) {
    Assessment use = use(CoaxJobs.run(cable, "length: 40 ft"), band);

    assertEquals(Verdict.NOT_STATED, use.verdict());
    assertEquals("coax.missing.attenuation", use.missing().get(0).key());
    assertTrue(use.value().isEmpty());
  }

  @Test
  void theFittedLawStandsBesideTheTable() {
    Assessment use = use(CoaxJobs.run("series-6", "length: 100 ft"), "off-air.uhf");
    double table = ((Decibels) argument(use, "coax.assume.law", "table")).inDecibels();
    double law = ((Decibels) argument(use, "coax.assume.law", "law")).inDecibels();

    assertEquals(table, law, table * 0.027); // largest relative residual of the fit
    assertEquals(
        0.11, ((Decibels) argument(use, "coax.assume.law", "residual")).inDecibels(), 1e-9);
  }

  @Test
  void networkingOverCoaxIsGivenItsLossAndConditionsButNoVerdict() {
    Assessment use = use(CoaxJobs.run("series-6", "length: 100 ft"), "coax-network.extended");

    assertEquals(Verdict.INFORMATION, use.verdict());
    assertTrue(
        PhrasesOf.keys(use)
            .containsAll(
                List.of(
                    "coax.note.network-budget",
                    "coax.note.entry-filter",
                    "coax.note.no-satellite")));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"90 m, WITHIN, 0", "90.1 m, BEYOND, -0.1", "100 ft, WITHIN, 59.52"})
  void anOutletRunIsAtMostNinetyMetresLong(String length, Verdict verdict, double leftMetres) {
    // ANSI/TIA-570: 90 m (295 ft) from distribution device to outlet
    Assessment result =
        CoaxJobs.only(
            CoaxJobs.assess(CoaxJobs.run("series-6", "length: " + length)), "coax.length");

    assertEquals(verdict, result.verdict());
    assertEquals(leftMetres, ((Length) result.margin().orElseThrow()).inMetres(), 1e-9);
    assertEquals(
        verdict == Verdict.WITHIN ? "coax.limit.length" : "coax.short.length",
        result.limitedBy().orElseThrow().key());
    assertEquals("r", result.subject());
  }

  @ParameterizedTest
  @CsvSource({"dish, true", "mast, true", "roof-cell, false"})
  void aRunToAnAntennaIsNoOutletRunAndAReceivingOneIsBonded(String place, boolean bonded) {
    String from = "{head: rack, panel: C1, port: 1, finish: terminated}";
    List<Assessment> all = CoaxJobs.assess(CoaxJobs.run("series-6", from, place, "length: 100 ft"));

    assertTrue(all.stream().noneMatch(a -> a.topic().equals("coax.length")));
    assertEquals(bonded, isBonded(CoaxJobs.only(all, "coax.use.satellite.if")));
  }

  @Test
  void coaxFromOutdoorsIsBondedAndCoaxInsideIsNot() {
    String rack = "{head: rack, panel: C1, port: 1, finish: terminated}";
    String demarc = "{head: demarc, finish: terminated}";

    assertTrue(
        isBonded(use(CoaxJobs.run("series-6", demarc, "den-tv", "length: 9 m"), "satellite.if")));
    assertTrue(
        isBonded(use(CoaxJobs.run("series-6", rack, "yard-tv", "length: 9 m"), "satellite.if")));
    for (String outdoors : List.of("buried", "outdoor_exposed", "outdoor_conduit")) {
      assertTrue(
          isBonded(
              use(
                  CoaxJobs.run("series-6", "length: 9 m, environments: [" + outdoors + "]"),
                  "satellite.if")));
    }
    assertFalse(
        isBonded(
            use(CoaxJobs.run("series-6", "length: 9 m, environments: [attic]"), "satellite.if")));
  }

  @ParameterizedTest
  @CsvSource({"damaged, coax.limit.damaged", "abandoned, coax.limit.abandoned"})
  void aDamagedOrAbandonedRunCarriesNothing(String condition, String words) {
    List<Assessment> all =
        CoaxJobs.assess(CoaxJobs.run("series-6", "length: 9 m, condition: " + condition));

    assertEquals(15, all.size());
    for (Assessment assessment : all) {
      assertEquals(Verdict.BEYOND, assessment.verdict());
      assertEquals(words, assessment.limitedBy().orElseThrow().key());
    }
  }

  @Test
  void whatTheRecordLacksIsNamed() {
    List<Assessment> noLength = CoaxJobs.assess(CoaxJobs.run("series-6", ""));
    Assessment noSeries = use(CoaxJobs.run("plain", "length: 9 m"), "satellite.if");

    assertEquals(
        "coax.missing.length",
        CoaxJobs.only(noLength, "coax.use.satellite.if").missing().get(0).key());
    assertEquals(Verdict.NOT_STATED, CoaxJobs.only(noLength, "coax.length").verdict());
    assertEquals("coax.missing.series", noSeries.missing().get(0).key());
  }

  @Test
  void aRunThatIsNotTerminatedSaysSo() {
    String run =
        CoaxJobs.run("series-6", "length: 9 m, length_by: estimate")
            .replace("den-tv, finish: terminated", "den-tv, finish: coiled");
    List<Assessment> all = CoaxJobs.assess(run);

    for (String topic : List.of("coax.use.satellite.if", "coax.length")) {
      List<String> keys = PhrasesOf.keys(CoaxJobs.only(all, topic));
      assertTrue(keys.contains("coax.assume.once-terminated"), topic);
      assertTrue(keys.contains("coax.assume.length-estimated"), topic);
    }
  }

  @Test
  void aMeasuredLengthIsNoEstimate() {
    assertFalse(
        PhrasesOf.keys(
                use(CoaxJobs.run("series-6", "length: 9 m, length_by: tape"), "satellite.if"))
            .contains("coax.assume.length-estimated"));
  }

  @Test
  void otherMediaAreNotAssessed() {
    assertTrue(CoaxJobs.assess(CoaxJobs.run("cat6", "length: 9 m")).isEmpty());
  }

  private static double atticAt50(String more) {
    Assessment use =
        CoaxJobs.only(
            CoaxJobs.assessWithAtticAt50(CoaxJobs.run("series-6", more)), "coax.use.satellite.if");
    return decibels(use);
  }

  private static double behind(Assessment use, int ways) {
    return PhrasesOf.all(use).stream()
        .filter(phrase -> phrase.key().equals("coax.band.behind"))
        .filter(phrase -> phrase.arguments().get("ways").equals(Count.of(ways)))
        .map(phrase -> (Decibels) phrase.arguments().get("loss"))
        .findFirst()
        .orElseThrow()
        .inDecibels();
  }

  private static boolean isBonded(Assessment assessment) {
    return PhrasesOf.keys(assessment).contains("coax.assume.bonding");
  }

  private static Assessment use(String runs, String band) {
    return CoaxJobs.only(CoaxJobs.assess(runs), "coax.use." + band);
  }

  private static double decibels(Assessment assessment) {
    return ((Decibels) assessment.value().orElseThrow()).inDecibels();
  }

  private static Object argument(Assessment assessment, String key, String name) {
    return PhrasesOf.argument(assessment, key, name).orElseThrow();
  }
}
