package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Angle;
import wallbook.quantity.Count;
import wallbook.quantity.Length;
import wallbook.wording.Phrase;

class BendQuestionsTest {

  @ParameterizedTest
  @CsvSource({ // NEC 358.26 and its like: 360°; TIA-569: 180° (trade discussion of both)
    "90 90,180,WITHIN,WITHIN",
    "90 90 90 90,360,WITHIN,BEYOND",
    "90 90 45 45 45 45,360,WITHIN,BEYOND",
    "90 90 45 45 45 45 10,370,BEYOND,BEYOND",
    "30 30,60,WITHIN,WITHIN",
    "90 90 1,181,WITHIN,BEYOND"
  })
  void bendsBetweenPullPointsAddUp(String bends, double total, Verdict byCode, Verdict byPractice) {
    ConduitHouse house = ConduitHouse.ent1(path("10 ft", bends));
    Assessment code = house.answer("conduit.bends.nec");
    assertEquals(total, ((Angle) code.value().orElseThrow()).inDegrees(), 1e-9);
    assertEquals(360 - total, ((Angle) code.margin().orElseThrow()).inDegrees(), 1e-6);
    assertEquals(byCode, code.verdict());
    assertEquals(byPractice, house.answer("conduit.bends.tia-569").verdict());
  }

  @ParameterizedTest
  @CsvSource({"100 ft,WITHIN", "101 ft,BEYOND", "30 m,WITHIN", "31 m,BEYOND"})
  void aHundredFeetMayLieBetweenPullPoints(String length, Verdict verdict) {
    // TIA-569: 30 m (100 ft)
    Assessment section =
        ConduitHouse.ent1(path(length, "")).answer("conduit.section-length.tia-569");
    assertEquals(verdict, section.verdict());
  }

  @Test
  void theCodeHasNoLimitOfLength() {
    ConduitHouse house = ConduitHouse.ent1(path("400 ft", "90"));
    assertEquals(Verdict.WITHIN, house.answer("conduit.bends.nec").verdict());
    assertEquals(Verdict.BEYOND, house.answer("conduit.section-length.tia-569").verdict());
  }

  @ParameterizedTest
  @CsvSource({"90,WITHIN", "91,BEYOND"})
  void noSingleBendMayPassARightAngle(String bend, Verdict verdict) {
    // TIA-569
    assertEquals(
        verdict,
        ConduitHouse.ent1(path("10 ft", bend)).answer("conduit.single-bend.tia-569").verdict());
  }

  @Test
  void aPullBoxBeginsANewSection() {
    ConduitHouse house =
        ConduitHouse.ent1(
            "path: [{straight: 60 ft}, {bend: 90 deg}, {bend: 90 deg}, {pull_box: PB-1},"
                + " {straight: 70 ft}, {bend: 45 deg}]");
    Assessment bends = house.answer("conduit.bends.tia-569");
    assertEquals(180, ((Angle) bends.value().orElseThrow()).inDegrees(), 1e-9);
    assertEquals(
        Phrase.of("conduit.section.numbered", "number", 1, "of", 2),
        bends.limitedBy().orElseThrow());
    Assessment length = house.answer("conduit.section-length.tia-569");
    assertEquals(70, feet(length), 1e-9);
    assertEquals(
        Phrase.of("conduit.section.numbered", "number", 2, "of", 2),
        length.limitedBy().orElseThrow());
    assertEquals(Count.of(0), house.answer("conduit.pull-boxes").value().orElseThrow());
  }

  @Test
  void aBendOfKnownRadiusAddsItsArc() {
    // 99 ft and a quarter of 1 ft radius: 99 + π/2 = 100.57 ft
    Assessment section =
        ConduitHouse.ent1("path: [{straight: 99 ft}, {bend: 90 deg, radius: 1 ft}]")
            .answer("conduit.section-length.tia-569");
    assertEquals(100.57, feet(section), 0.01);
    assertEquals(Verdict.BEYOND, section.verdict());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{straight: 100 ft}, {bend: 90 deg}, {bend: 90 deg}|0",
        "{straight: 101 ft}|1",
        "{straight: 250 ft}|2",
        "{straight: 300 ft}|2",
        "{bend: 90 deg}, {bend: 90 deg}, {straight: 5 ft}, {bend: 90 deg}|1",
        "{bend: 90 deg}, {bend: 90 deg}, {bend: 90 deg}, {bend: 90 deg}, {bend: 10 deg}|2",
        "{straight: 90 ft}, {bend: 90 deg}, {straight: 20 ft}, {bend: 90 deg}, {bend: 90 deg}|1",
        "{straight: 60 ft}, {pull_box: PB}, {straight: 60 ft}|0",
        "{bend: 270 deg}|0",
        "{straight: 99 ft}, {bend: 90 deg, radius: 1 ft}|1",
        "{bend: 90 deg}, {straight: 101 ft}, {bend: 90 deg}, {bend: 90 deg}|1"
      })
  void missingPullBoxesAreCountedAsFewAsTheLimitsAllow(String pieces, int boxes) {
    // by hand from 180° and 100 ft: one more box as soon as either would be passed
    Assessment missing = ConduitHouse.ent1("path: [" + pieces + "]").answer("conduit.pull-boxes");
    assertEquals(Count.of(boxes), missing.value().orElseThrow());
    assertEquals(boxes == 0 ? Verdict.WITHIN : Verdict.BEYOND, missing.verdict());
    assertEquals(Count.of(-boxes), missing.margin().orElseThrow());
  }

  @Test
  void aMissingBoxComesWithItsSize() {
    // TIA-569 table, size 1: 4 × 16 × 3 in, 2 in wider for each further conduit (from memory)
    ConduitHouse house = ConduitHouse.ent1(path("120 ft", ""));
    Assessment size = house.answer("conduit.pull-box-size");
    assertEquals(16, ((Length) size.value().orElseThrow()).inInches(), 1e-9);
    assertEquals(4, ((Length) size.asked().arguments().get("width")).inInches(), 1e-9);
    assertEquals(3, ((Length) size.asked().arguments().get("depth")).inInches(), 1e-9);
    assertEquals(2, ((Length) size.asked().arguments().get("extra")).inInches(), 1e-9);
    assertFalse(ConduitHouse.ent1(path("20 ft", "")).asks("conduit.pull-box-size"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "conduit.bends.nec",
        "conduit.bends.tia-569",
        "conduit.single-bend.tia-569",
        "conduit.pull-boxes"
      })
  void unrecordedBendsAreNoBendsOfZero(String topic) {
    Assessment answer = ConduitHouse.ent1("length: 40 ft").answer(topic);
    assertEquals(Verdict.NOT_STATED, answer.verdict());
    assertEquals(List.of(Phrase.of("conduit.missing.bends")), answer.missing());
  }

  @ParameterizedTest
  @CsvSource({"100 ft,WITHIN", "101 ft,NOT_STATED"})
  void aShortConduitKeepsTheLengthWhateverItsPath(String length, Verdict verdict) {
    Assessment section =
        ConduitHouse.ent1("length: " + length).answer("conduit.section-length.tia-569");
    assertEquals(verdict, section.verdict());
  }

  @Test
  void piecesThatDoNotAddUpAreSaidSo() {
    // 50 ft of 60 ft recorded
    assertTrue(assumesIncomplete("length: 60 ft, " + path("50 ft", "90")));
    assertFalse(assumesIncomplete("length: 52 ft, " + path("50 ft", "90")));
    assertFalse(assumesIncomplete(path("50 ft", "90")));
  }

  @Test
  void familiesOutsideTheCodeAreJudgedByPracticeOnly() {
    ConduitHouse house =
        ConduitHouse.with(
            "type: iec_pliable, trade_size: '25', bore: 18 mm, pull_string: none,"
                + " condition: clear, "
                + path("10 ft", "90"));
    assertFalse(house.asks("conduit.bends.nec"));
    assertFalse(house.asks("conduit.bend-radius.nec"));
    assertEquals(Verdict.WITHIN, house.answer("conduit.bends.tia-569").verdict());
  }

  @ParameterizedTest
  @CsvSource({ // NEC articles: EMT 358.26, ENT 362.26, PVC 352.26, RMC 344.26, FMC 348.26
    "emt,358.26",
    "ent,362.26",
    "pvc_40,352.26",
    "pvc_80,352.26",
    "rmc,344.26",
    "fmc,348.26"
  })
  void eachFamilyHasItsOwnArticle(String family, String clause) {
    Assessment bends =
        ConduitHouse.with(
                "type: "
                    + family
                    + ", trade_size: '1', pull_string: none, condition: clear, "
                    + path("10 ft", "90"))
            .answer("conduit.bends.nec");
    assertTrue(bends.source().citation().contains(clause), bends.source().citation());
  }

  @ParameterizedTest
  @CsvSource({ // TIA-569: inside radius 6 × bore up to 2 in, 10 × above (from memory)
    "ent,3/4,4.56",
    "emt,1,6.29",
    "emt,2,12.4",
    "emt,2-1/2,27.3",
    "emt,3,33.6"
  })
  void practiceAsksForAnInsideRadius(String family, String size, double inches) {
    Assessment radius = radius(family, size, "200 in", "tia-569");
    assertEquals(inches, ((Length) radius.limit().orElseThrow()).inInches(), 0.05);
    assertEquals(Verdict.WITHIN, radius.verdict());
  }

  @Test
  void anElbowThatTheCodeAllowsMayFailThePractice() {
    // EMT 1: chapter 9 table 2 asks 5.75 in to the centre line: inside 5.2255 in, below 6.294
    Assessment practice = radius("emt", "1", "5.75 in", "tia-569");
    assertEquals(5.2255, ((Length) practice.value().orElseThrow()).inInches(), 1e-6);
    assertEquals(Verdict.BEYOND, practice.verdict());
    Assessment code = radius("emt", "1", "5.75 in", "nec");
    assertEquals(Verdict.CONDITIONAL, code.verdict());
    assertEquals("conduit.bend-radius.one-shot", code.limitedBy().orElseThrow().key());
  }

  @ParameterizedTest
  @CsvSource({ // NEC chapter 9 table 2, size 1: one-shot 5-3/4 in, other bends 6 in (from memory)
    "5.7 in,BEYOND",
    "5.75 in,CONDITIONAL",
    "5.9 in,CONDITIONAL",
    "6 in,WITHIN"
  })
  void theCodeAsksForACentreLineRadius(String radius, Verdict verdict) {
    assertEquals(verdict, radius("emt", "1", radius, "nec").verdict());
  }

  @Test
  void theTightestBendDecides() {
    Assessment radius =
        ConduitHouse.ent1("path: [{bend: 90 deg, radius: 12 in}, {bend: 45 deg, radius: 4 in}]")
            .answer("conduit.bend-radius.nec");
    assertEquals(4, ((Length) radius.value().orElseThrow()).inInches(), 1e-9);
    assertEquals(Verdict.BEYOND, radius.verdict());
  }

  @Test
  void anUnknownRadiusIsNamedUnlessAnotherFailsAlready() {
    ConduitHouse open = ConduitHouse.ent1("path: [{bend: 90 deg, radius: 12 in}, {bend: 45 deg}]");
    ConduitHouse fails = ConduitHouse.ent1("path: [{bend: 90 deg, radius: 2 in}, {bend: 45 deg}]");
    for (String rule : List.of("conduit.bend-radius.nec", "conduit.bend-radius.tia-569")) {
      assertEquals(List.of(Phrase.of("conduit.missing.radius")), open.answer(rule).missing());
      assertEquals(Verdict.BEYOND, fails.answer(rule).verdict());
    }
  }

  @Test
  void aStraightConduitHasNoRadiusToJudge() {
    assertFalse(ConduitHouse.ent1(path("10 ft", "")).asks("conduit.bend-radius.tia-569"));
  }

  @Test
  void withoutABoreTheInsideRadiusIsNotStated() {
    Assessment radius =
        ConduitHouse.with(
                "type: iec_rigid, trade_size: '25', pull_string: none, condition: clear,"
                    + " path: [{bend: 90 deg, radius: 12 in}]")
            .answer("conduit.bend-radius.tia-569");
    assertEquals(List.of(Phrase.of("conduit.missing.bore", "size", "25")), radius.missing());
  }

  @Test
  void conduitByOutsideDiameterTakesItsMultipleFromTheBore() {
    // bore 21 mm: 6 × 21 = 126 mm
    Assessment radius =
        ConduitHouse.with(
                "type: iec_rigid, trade_size: '25', bore: 21 mm, pull_string: none,"
                    + " condition: clear, path: [{bend: 90 deg, radius: 12 in}]")
            .answer("conduit.bend-radius.tia-569");
    assertEquals(126, ((Length) radius.limit().orElseThrow()).inMillimetres(), 1e-6);
  }

  private static Assessment radius(String family, String size, String radius, String rule) {
    return ConduitHouse.with(
            "type: "
                + family
                + ", trade_size: "
                + size
                + ", pull_string: none, condition: clear,"
                + " path: [{straight: 10 ft}, {bend: 90 deg, radius: "
                + radius
                + "}]")
        .answer("conduit.bend-radius." + rule);
  }

  private static boolean assumesIncomplete(String fields) {
    return ConduitHouse.ent1(fields).answer("conduit.bends.nec").assumptions().stream()
        .anyMatch(phrase -> phrase.key().equals("conduit.assume.incomplete"));
  }

  private static double feet(Assessment answer) {
    return ((Length) answer.value().orElseThrow()).inFeet();
  }

  private static String path(String straight, String bends) {
    String pieces =
        bends.isEmpty()
            ? ""
            : List.of(bends.split(" ")).stream()
                .map(bend -> ", {bend: " + bend + " deg}")
                .collect(Collectors.joining());
    return "path: [{straight: " + straight + "}" + pieces + "]";
  }
}
