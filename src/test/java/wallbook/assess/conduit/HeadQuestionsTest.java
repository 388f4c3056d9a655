package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Diameter;
import wallbook.wording.Phrase;

class HeadQuestionsTest {
  private static final String STRAIGHT = "path: [{straight: 20 ft}]";

  @Test
  void aHeadPassesAStraightBoreWiderThanItsDiagonal() {
    // √(13.9² + 4.45²) = 14.59 mm in 25.4 mm
    Assessment video = ConduitHouse.ent1(STRAIGHT).answer("conduit.head.video-plug");
    assertEquals(Verdict.WITHIN, video.verdict());
    assertEquals(14.59, mm(video.value().orElseThrow()), 0.01);
    assertEquals(25.4, mm(video.limit().orElseThrow()), 0.01);
    assertEquals(10.81, mm(video.margin().orElseThrow()), 0.01);
  }

  @Test
  void aHeadWiderThanTheBoreDoesNotPass() {
    // 14.59 mm in 1/2 ENT, 14.22 mm: no; in 1/2 EMT, 15.80 mm: yes
    Assessment tubing =
        ConduitHouse.with(
                "type: ent, trade_size: 1/2, pull_string: none, condition: clear, " + STRAIGHT)
            .answer("conduit.head.video-plug");
    assertEquals(Verdict.BEYOND, tubing.verdict());
    assertEquals("conduit.head.too-wide", reason(tubing));
    assertEquals(-0.37, mm(tubing.margin().orElseThrow()), 0.01);
    Assessment steel =
        ConduitHouse.with(
                "type: emt, trade_size: 1/2, pull_string: none, condition: clear,"
                    + " proved: {date: 2026-02-11, by: mandrel}, "
                    + STRAIGHT)
            .answer("conduit.head.video-plug");
    assertEquals(Verdict.WITHIN, steel.verdict());
  }

  @Test
  void besideACableThatFitsTheFreeCircleAHeadPasses() {
    // above 11.7 × 8.3 in 1 in ENT 15.67 mm are free; one of 6.35 mm lies there
    assertEquals(
        Verdict.WITHIN,
        ConduitHouse.ent1(STRAIGHT).holding("cat6").answer("conduit.head.lc-simplex").verdict());
  }

  @Test
  void besideABundleThatWouldHaveToShiftAHeadPassesOnlyPerhaps() {
    // three of 6.35 mm: bundle 2.1547 × 6.35 = 13.68 mm; above 12.9 × 10.7 in 25.4 mm:
    // 12.7 − 10.7 + √(25.4² − 12.9²)/2 = 2 + 10.94 = 12.94; on end 12.7 − 12.9 + 11.52 = 11.32
    Assessment duplex =
        ConduitHouse.ent1(STRAIGHT)
            .holding("cat6", "cat6", "cat6")
            .answer("conduit.head.lc-duplex");
    assertEquals(Verdict.CONDITIONAL, duplex.verdict());
    assertEquals("conduit.head.must-shift", reason(duplex));
    Phrase words = duplex.limitedBy().orElseThrow();
    assertEquals(13.68, mm(words.arguments().get("bundle")), 0.01);
    assertEquals(12.94, mm(words.arguments().get("free")), 0.01);
  }

  @Test
  void besideACableThickerThanTheFreeCircleNoHeadPasses() {
    // 14-4 speaker cable 0.42 in = 10.67 mm; above 21.7 × 9.3 in 25.4 mm:
    // 12.7 − 9.3 + √(25.4² − 21.7²)/2 = 3.4 + 6.60 = 10.00
    Assessment duplex =
        ConduitHouse.ent1(STRAIGHT).holding("speaker-14-4").answer("conduit.head.sc-duplex");
    assertEquals(Verdict.BEYOND, duplex.verdict());
    assertEquals("conduit.head.no-room", reason(duplex));
    assertEquals(10.67, mm(duplex.value().orElseThrow()), 0.01);
    assertEquals(10.00, mm(duplex.limit().orElseThrow()), 0.01);
    assertEquals(-0.67, mm(duplex.margin().orElseThrow()), 0.01);
  }

  @Test
  void aStiffHeadIsTestedInEachBend() {
    // 8P8C 11.7 × 8.3 × 21.5 in 3/4 ENT (19.30 mm), R 127 mm = 5 in: 14.92 mm thick may pass
    Assessment passes =
        ConduitHouse.with(
                "type: ent, trade_size: 3/4, pull_string: none, condition: clear,"
                    + " proved: {date: 2026-02-11, by: mandrel},"
                    + " path: [{straight: 10 ft}, {bend: 90 deg, radius: 5 in}]")
            .answer("conduit.head.8p8c");
    assertEquals(Verdict.WITHIN, passes.verdict());
    // bore 14.4 mm, R 20 mm: flat h = √(14.4² − 11.7²)/2 = 4.197, √(24.197² − 10.75²) − 15.803
    // = 21.678 − 15.803 = 5.875 < 8.3; on end h = 5.884, √(25.884² − 10.75²) − 14.116 = 9.431 <
    // 11.7
    Assessment sticks =
        ConduitHouse.with(
                "type: ent, trade_size: 1/2, bore: 14.4 mm, pull_string: none, condition: clear,"
                    + " path: [{straight: 10 ft}, {bend: 90 deg, radius: 20 mm}]")
            .answer("conduit.head.8p8c");
    assertEquals(Verdict.BEYOND, sticks.verdict());
    assertEquals("conduit.head.sticks", reason(sticks));
    assertEquals(11.7, mm(sticks.value().orElseThrow()), 0.01);
    assertEquals(9.43, mm(sticks.limit().orElseThrow()), 0.01);
  }

  @Test
  void aHeadIsTakenBareAndOtherConditionsAreNamedToo() {
    Assessment plug =
        ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg}]")
            .holding("cat6")
            .answer("conduit.head.8p8c");
    assertEquals(
        java.util.List.of(
            "conduit.assume.bare-head", "conduit.assume.generic", "conduit.head.beside-in-bend"),
        plug.assumptions().stream().map(Phrase::key).toList());
    Assessment largest =
        ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg}]")
            .answer("conduit.largest-head");
    assertTrue(largest.assumptions().contains(Phrase.of("conduit.head.radius-unknown")));
    assertTrue(largest.assumptions().contains(Phrase.of("conduit.assume.bare-head")));
  }

  @Test
  void whatIsNotKnownOfTheBendsLeavesAHeadOpen() {
    assertEquals(
        "conduit.head.bends-unknown", reason(ConduitHouse.ent1("").answer("conduit.head.8p8c")));
    assertEquals(
        "conduit.head.radius-unknown",
        reason(
            ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg}]")
                .answer("conduit.head.8p8c")));
    Assessment stiff =
        ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg, radius: 6 in}]")
            .answer("conduit.head.mpo");
    assertEquals("conduit.head.stiff-unknown", reason(stiff));
    assertEquals(Verdict.CONDITIONAL, stiff.verdict());
  }

  @Test
  void besideCablesInABendAHeadIsLeftOpen() {
    Assessment plug =
        ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg, radius: 6 in}]")
            .holding("control-22-2")
            .answer("conduit.head.8p8c");
    assertEquals(Verdict.CONDITIONAL, plug.verdict());
    assertEquals("conduit.head.beside-in-bend", reason(plug));
  }

  @Test
  void theLargestHeadThatPassesIsNamed() {
    // 1 in ENT: duplex SC 23.61 mm passes 25.4 mm
    Assessment inOne = ConduitHouse.ent1(STRAIGHT).answer("conduit.largest-head");
    assertEquals(
        Phrase.of("conduit.largest-head.is", "head", Phrase.of("conduit.head.sc-duplex")),
        inOne.limitedBy().orElseThrow());
    assertEquals(23.61, mm(inOne.value().orElseThrow()), 0.01);
    assertEquals(Verdict.WITHIN, inOne.verdict());
    // 3/4 EMT, 20.93 mm: duplex LC 16.76 mm is the largest of the list
    Assessment inThreeQuarters =
        ConduitHouse.with(
                "type: emt, trade_size: 3/4, pull_string: none, condition: clear, " + STRAIGHT)
            .answer("conduit.largest-head");
    assertEquals(16.76, mm(inThreeQuarters.value().orElseThrow()), 0.01);
    assertEquals(Verdict.CONDITIONAL, inThreeQuarters.verdict());
    assertTrue(inThreeQuarters.assumptions().contains(Phrase.of("conduit.clearance.not-proved")));
  }

  @Test
  void whereNoneOfTheListPassesThatIsSaid() {
    Assessment none =
        ConduitHouse.with(
                "type: ent, trade_size: 1/2, bore: 6 mm, pull_string: none, condition: clear, "
                    + STRAIGHT)
            .answer("conduit.largest-head");
    assertEquals(Verdict.BEYOND, none.verdict());
    assertEquals("conduit.largest-head.none", reason(none));
  }

  private static String reason(Assessment answer) {
    return answer.limitedBy().orElseThrow().key();
  }

  private static double mm(Object diameter) {
    return ((Diameter) diameter).inMillimetres();
  }
}
