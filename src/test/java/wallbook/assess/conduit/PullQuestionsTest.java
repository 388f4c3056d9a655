package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Force;
import wallbook.quantity.LinearForce;
import wallbook.wording.Phrase;

class PullQuestionsTest {
  /** 20/90/30/90/10 ft: bends nearer the to-end, so that feeding at the to-end takes less. */
  private static final String TWO_BENDS =
      "path: [{straight: 20 ft}, {bend: 90 deg, radius: 6.5 in}, {straight: 30 ft},"
          + " {bend: 90 deg, radius: 6.5 in}, {straight: 10 ft}]";

  /** A cable of 0.026 lb/ft, as Category 6 in the reference. */
  private static final String OWN =
      "medium: balanced_pair, pairs: 4, diameter: 0.25 in, weight: 26 lb/1000 ft";

  @Test
  void oneCableIsPulledFromTheBetterEnd() {
    // W 0.026: fed at the from-end (0.26 × 2.1933 + 0.39) × 2.1933 + 0.13 = 2.2362
    // fed at the to-end (0.13 × 2.1933 + 0.39) × 2.1933 + 0.26 = 1.7408
    ConduitHouse house = ConduitHouse.ent1(TWO_BENDS).cable("own", OWN);
    Assessment dry = house.answer("conduit.pull.own.dry");
    assertEquals(1.7408, lbf(dry.value().orElseThrow()), 0.0005);
    assertEquals(25, lbf(dry.limit().orElseThrow()), 1e-9); // TIA-568.0
    assertEquals(23.2592, lbf(dry.margin().orElseThrow()), 0.0005);
    assertEquals(Verdict.WITHIN, dry.verdict());
    Phrase words = dry.limitedBy().orElseThrow();
    assertEquals("Attic", words.arguments().get("feed"));
    assertEquals("own", words.arguments().get("cable"));
    assertEquals(2.2362, lbf(words.arguments().get("worse")), 0.0005);
  }

  @Test
  void lubricantLessensTheTension() {
    // f 0.2: e^(0.1π) = 1.3691; (0.052 × 1.3691 + 0.156) × 1.3691 + 0.104 = 0.4150
    Assessment wet =
        ConduitHouse.ent1(TWO_BENDS).cable("own", OWN).answer("conduit.pull.own.lubricated");
    assertEquals(0.4150, lbf(wet.value().orElseThrow()), 0.0005);
  }

  @Test
  void severalCablesShareTheTensionAndPressOnTheBore() {
    // four of 0.25 in in 1 in: D/d = 4: 1.4; W 0.104: K′ 0.7, e^(0.35π) = 3.0028
    // fed at the to-end ((0.728 × 3.0028) + 2.184) × 3.0028 + 1.456 = 14.579
    Assessment dry =
        ConduitHouse.ent1(TWO_BENDS)
            .cable("own", OWN)
            .holding("own", "own", "own", "own")
            .answer("conduit.pull.contents.dry");
    assertEquals(14.579, lbf(dry.value().orElseThrow()), 0.005);
    assertEquals(80, lbf(dry.limit().orElseThrow()), 1e-9); // 0.8 × 4 × 25, own caution
  }

  @Test
  void theWeakestCableIsOverstressedFirst() {
    // control 22-2: 0.008 × 642.4 × 2 = 10.28 lbf; with Category 6 (25): 0.8 × 2 × 10.28 = 16.45
    Assessment dry =
        ConduitHouse.ent1(TWO_BENDS)
            .holding("cat6", "control-22-2")
            .answer("conduit.pull.contents.dry");
    assertEquals(16.45, lbf(dry.limit().orElseThrow()), 0.01);
    assertEquals(
        "Control cable, 22 AWG, two conductors",
        dry.limitedBy().orElseThrow().arguments().get("cable"));
  }

  @ParameterizedTest
  @CsvSource({ // 25 lbf is reached at 399.8 ft with two quarter bends at the end, f 0.5
    "399 ft,WITHIN",
    "401 ft,BEYOND"
  })
  void aPullBeyondTheCablesLimitIsSaidSo(String straight, Verdict verdict) {
    // a second straight as long keeps both directions alike
    Assessment dry =
        ConduitHouse.ent1(
                "path: [{straight: "
                    + straight
                    + "}, {bend: 90 deg}, {bend: 90 deg},"
                    + " {pull_box: PB}, {bend: 90 deg}, {bend: 90 deg}, {straight: "
                    + straight
                    + "}]")
            .cable("own", OWN)
            .answer("conduit.pull.own.dry");
    assertEquals(verdict, dry.verdict());
  }

  @Test
  void aPullPointEndsThePull() {
    // two sections of 100 ft at 0.026 · 0.5: 1.3 lbf each, not 2.6
    Assessment dry =
        ConduitHouse.ent1("path: [{straight: 100 ft}, {pull_box: PB}, {straight: 100 ft}]")
            .cable("own", OWN)
            .answer("conduit.pull.own.dry");
    assertEquals(1.3, lbf(dry.value().orElseThrow()), 1e-6);
    assertEquals("Rack", dry.limitedBy().orElseThrow().arguments().get("feed"));
  }

  @Test
  void aRiseIsPulledDownFromTheTop() {
    // 20 ft rising 30° from the from-end, W 0.026, f 0.5: up 0.4852, down no tension at all
    Assessment dry =
        ConduitHouse.ent1("path: [{straight: 20 ft, rise: 30 deg}]")
            .cable("own", OWN)
            .answer("conduit.pull.own.dry");
    assertEquals(0, lbf(dry.value().orElseThrow()), 0);
    Phrase words = dry.limitedBy().orElseThrow();
    assertEquals("Attic", words.arguments().get("feed"));
    assertEquals(0.4852, lbf(words.arguments().get("worse")), 0.0005);
  }

  @Test
  void whatIsAssumedIsSaid() {
    Assessment one = ConduitHouse.ent1(TWO_BENDS).answer("conduit.pull.cat6.dry");
    assertEquals(List.of("conduit.assume.friction", "conduit.assume.generic"), keys(one));
    Assessment two =
        ConduitHouse.ent1("length: 90 ft, " + TWO_BENDS)
            .holding("cat6", "cat6")
            .answer("conduit.pull.contents.dry");
    assertEquals(
        List.of(
            "conduit.assume.friction",
            "conduit.assume.group",
            "conduit.assume.incomplete",
            "conduit.assume.generic",
            "conduit.assume.one-pull"),
        keys(two));
    assertTrue(two.source().citation().contains("four fifths"));
    Assessment estimate = ConduitHouse.ent1(TWO_BENDS).answer("conduit.pull.cat6.estimate");
    assertTrue(keys(estimate).contains("conduit.assume.generic"));
    Assessment sidewall = ConduitHouse.ent1(TWO_BENDS).answer("conduit.sidewall.cat6.dry");
    assertTrue(keys(sidewall).contains("conduit.assume.friction"));
  }

  @Test
  void anEndAtAPlaceIsNamedByThePlace() {
    Assessment dry =
        ConduitHouse.with(
                ConduitHouse.PROVED_ENT_1
                    + ", from: {place: p}, to: {space: attic}, path: [{straight: 20 ft}]")
            .answer("conduit.pull.cat6.dry");
    assertEquals("Plate", dry.limitedBy().orElseThrow().arguments().get("feed"));
  }

  @Test
  void theStandardsEstimateStandsBeside() {
    // 60 ft · 0.026 · 0.5 · e^(0.5π) = 0.78 × 4.8105 = 3.752
    Assessment estimate =
        ConduitHouse.ent1(TWO_BENDS).cable("own", OWN).answer("conduit.pull.own.estimate");
    assertEquals(3.752, lbf(estimate.value().orElseThrow()), 0.001);
    assertEquals(Verdict.INFORMATION, estimate.verdict());
    assertTrue(estimate.source().citation().contains("IEEE 1185"));
  }

  @Test
  void thePressureInTheBendsIsGivenAndNotJudged() {
    // fed at the to-end: leaving the second bend (0.13 × 2.1933 + 0.39) × 2.1933 = 1.4808 lbf,
    // inside radius 6.5 − 0.5 in = 0.5 ft: 2.9615 lbf/ft
    Assessment sidewall =
        ConduitHouse.ent1(TWO_BENDS).cable("own", OWN).answer("conduit.sidewall.own.dry");
    assertEquals(2.9615, perFoot(sidewall), 0.001);
    assertEquals(Verdict.INFORMATION, sidewall.verdict());
  }

  @Test
  void thePressureOfThreeIsOnTheMiddleOne() {
    // three of 0.25 in in 1 in: x = 1/3, w = 1 + 4/27 = 1.14815; K′ = 0.57407, e^(K′π/2) = 2.4640
    // W 0.078: 10 ft 0.44778 → 1.10333; + 30 ft 1.34333 = 2.44666 → 6.02857 leaving the second bend
    // (3w − 2)/3 = 0.48148; / 0.5 ft: 5.8053 lbf/ft
    Assessment sidewall =
        ConduitHouse.ent1(TWO_BENDS)
            .cable("own", OWN)
            .holding("own", "own", "own")
            .answer("conduit.sidewall.contents.dry");
    assertEquals(5.805, perFoot(sidewall), 0.003);
  }

  @Test
  void thePressureOfTwoIsShared() {
    // two: w = 1/√(1 − 1/9) = 1.06066; K′ 0.53033, e^(K′π/2) = 2.3003; W 0.052:
    // 0.27577 → 0.63436; + 0.82731 = 1.46167 → 3.36230; × w/2 / 0.5 ft = 3.5663
    Assessment sidewall =
        ConduitHouse.ent1(TWO_BENDS)
            .cable("own", OWN)
            .holding("own", "own")
            .answer("conduit.sidewall.contents.dry");
    assertEquals(3.566, perFoot(sidewall), 0.003);
  }

  @Test
  void anUnknownRadiusLeavesThePressureOpen() {
    Assessment sidewall =
        ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg}]")
            .answer("conduit.sidewall.cat6.dry");
    assertEquals(List.of(Phrase.of("conduit.missing.radius")), sidewall.missing());
    Assessment tooTight =
        ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg, radius: 0.5 in}]")
            .answer("conduit.sidewall.cat6.dry");
    assertEquals(List.of(Phrase.of("conduit.missing.radius")), tooTight.missing());
  }

  @Test
  void anUnknownBoreLeavesThePressureOpen() {
    Assessment sidewall =
        ConduitHouse.with(
                "type: iec_rigid, trade_size: '25', pull_string: none, condition: clear, "
                    + TWO_BENDS)
            .answer("conduit.sidewall.cat6.dry");
    assertEquals(List.of(Phrase.of("conduit.missing.bore", "size", "25")), sidewall.missing());
  }

  @Test
  void aStraightConduitHasNoPressure() {
    assertFalse(ConduitHouse.ent1("path: [{straight: 9 ft}]").asks("conduit.sidewall.cat6.dry"));
  }

  @Test
  void unrecordedBendsLeaveThePullOpen() {
    Assessment dry = ConduitHouse.ent1("length: 60 ft").answer("conduit.pull.cat6.dry");
    assertEquals(Verdict.NOT_STATED, dry.verdict());
    assertEquals(List.of(Phrase.of("conduit.missing.bends")), dry.missing());
  }

  @Test
  void whatTheCableLacksIsNamed() {
    Assessment dry =
        ConduitHouse.ent1(TWO_BENDS)
            .cable("odd", "medium: fibre, fibre_class: om3, fibres: 2")
            .answer("conduit.pull.odd.dry");
    assertEquals(
        List.of(
            Phrase.of("conduit.missing.weight", "cable", "odd"),
            Phrase.of("conduit.missing.tension", "cable", "odd")),
        dry.missing());
    Assessment two =
        ConduitHouse.with(
                "type: iec_rigid, trade_size: '25', pull_string: none, condition: clear, "
                    + TWO_BENDS)
            .cable("odd", "medium: balanced_pair, pairs: 4, weight: 26 lb/1000 ft")
            .holding("odd", "cat6")
            .answer("conduit.pull.contents.dry");
    assertEquals(
        List.of(
            Phrase.of("conduit.missing.diameter", "cable", "odd"),
            Phrase.of("conduit.missing.bore-for-weight")),
        two.missing());
  }

  @Test
  void anOccupiedConduitIsNotPulledThroughAgain() {
    ConduitHouse house = ConduitHouse.ent1(TWO_BENDS).holding("cat6");
    assertTrue(house.asks("conduit.pull.contents.dry"));
    assertFalse(house.asks("conduit.pull.cat6.dry"));
  }

  @Test
  void aPullThroughAConduitThatWasNotProvedIsConditional() {
    ConduitHouse house =
        ConduitHouse.with(
            "type: ent, trade_size: '1', pull_string: none, condition: clear, " + TWO_BENDS);
    Assessment dry = house.answer("conduit.pull.cat6.dry");
    assertEquals(Verdict.CONDITIONAL, dry.verdict());
    assertEquals("conduit.clearance.not-proved", dry.limitedBy().orElseThrow().key());
    // what lies there already was drawn through
    Assessment contents = house.holding("cat6").answer("conduit.pull.contents.dry");
    assertEquals(Verdict.WITHIN, contents.verdict());
  }

  @Test
  void aPullThroughACrushedConduitHasNoMargin() {
    ConduitHouse house =
        ConduitHouse.with(
            "type: ent, trade_size: '1', pull_string: none, condition: crushed, " + TWO_BENDS);
    Assessment dry = house.answer("conduit.pull.cat6.dry");
    assertEquals(Verdict.BEYOND, dry.verdict());
    assertTrue(dry.margin().isEmpty());
  }

  @Test
  void theBoreNeedNotBeKnownToPullOneCable() {
    Assessment dry =
        ConduitHouse.with(
                "type: iec_rigid, trade_size: '25', pull_string: none, condition: clear, "
                    + TWO_BENDS)
            .cable("own", OWN)
            .answer("conduit.pull.own.dry");
    assertEquals(1.7408, lbf(dry.value().orElseThrow()), 0.0005);
  }

  @Property(tries = 60)
  void turningAConduitRoundSwapsTheTensionsOfItsEnds(@ForAll("pieces") List<String> pieces) {
    List<String> back = new java.util.ArrayList<>(pieces);
    java.util.Collections.reverse(back);
    BothEnds there = bothEnds(pieces);
    BothEnds turned = bothEnds(back);
    assertEquals(there.fromFirst().inNewtons(), turned.fromLast().inNewtons(), 1e-9);
    assertEquals(there.fromLast().inNewtons(), turned.fromFirst().inNewtons(), 1e-9);
    assertEquals(there.better().inNewtons(), turned.better().inNewtons(), 1e-9);
  }

  @Provide
  Arbitrary<List<String>> pieces() {
    Arbitrary<String> straights =
        Arbitraries.integers().between(1, 90).map(feet -> "{straight: " + feet + " ft}");
    Arbitrary<String> bends =
        Arbitraries.integers().between(10, 90).map(degrees -> "{bend: " + degrees + " deg}");
    Arbitrary<String> boxes = Arbitraries.just("{pull_box: PB}");
    return Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(3, straights),
            net.jqwik.api.Tuple.of(3, bends),
            net.jqwik.api.Tuple.of(1, boxes))
        .list()
        .ofMinSize(1)
        .ofMaxSize(7);
  }

  private static BothEnds bothEnds(List<String> pieces) {
    List<PullSection> sections =
        PullSection.of(
            ConduitHouse.ent1("path: [" + String.join(", ", pieces) + "]").conduit().path());
    return BothEnds.of(
        sections,
        java.util.Optional.empty(),
        new PullingTension(
            LinearForce.poundsForcePerFoot(0.1),
            wallbook.quantity.Factor.of(1),
            wallbook.quantity.Factor.of(0.5)));
  }

  private static List<String> keys(Assessment answer) {
    return answer.assumptions().stream().map(Phrase::key).toList();
  }

  private static double lbf(Object force) {
    return ((Force) force).inPoundsForce();
  }

  private static double perFoot(Assessment answer) {
    return ((LinearForce) answer.value().orElseThrow()).inPoundsForcePerFoot();
  }
}
