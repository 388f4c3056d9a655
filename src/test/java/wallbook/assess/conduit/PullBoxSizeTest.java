package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.wording.Phrase;

class PullBoxSizeTest {
  private static final String AT_BOX =
      "type: emt, trade_size: '2', pull_string: none, condition: clear,"
          + " from: {head: rack}, to: {place: pb}";

  private final PullBoxSize sizes = new PullBoxSize(Jobs.TABLES);

  @Test
  void aStraightPullTakesEightTimesTheLargestSize() {
    // NEC 314.28, code quiz of a trade journal: 2 in → 16 in
    assertEquals(16, sizes.straightPull(Length.inches(2)).inInches(), 1e-9);
  }

  @Test
  void anAnglePullTakesSixTimesTheLargestAndTheOthers() {
    // same quiz: 4, 3 and 2 in → 6 × 4 + 3 + 2 = 29 in
    Length box = sizes.anglePull(Length.inches(4), List.of(Length.inches(3), Length.inches(2)));
    assertEquals(29, box.inInches(), 1e-9);
  }

  @Test
  void aBoxOfTheJobIsSizedForTheConduitsThatEndThere() {
    ConduitHouse house = ConduitHouse.with(AT_BOX).place("pb", "pull_box");
    Assessment straight = house.answer("conduit.box.straight");
    assertEquals("pb", straight.subject());
    assertEquals(16, inches(straight), 1e-9); // 8 × 2
    assertEquals(12, inches(house.answer("conduit.box.angle")), 1e-9); // 6 × 2
  }

  @Test
  void aConduitThatPassesABoxCounts() {
    ConduitHouse house =
        ConduitHouse.ent1("path: [{straight: 9 ft}, {pull_box: pb}, {straight: 9 ft}]")
            .place("pb", "pull_box");
    assertEquals(8, inches(house.answer("conduit.box.straight")), 1e-9); // 8 × 1
  }

  @Test
  void theLargestOfSeveralConduitsCountsSixTimes() {
    // sizes 2, 4 and 3 at one box: 6 × 4 + 3 + 2 = 29 in, straight 8 × 4 = 32 in
    String conduit =
        "  - {id: c%1$s, label: C, name: C, type: emt, trade_size: '%1$s', pull_string: none,"
            + " condition: clear, from: {place: pb}, to: {space: util}}\n";
    Job job =
        Jobs.job(
            "floors:\n  - {id: g, name: G, level: 0, elevation: 0 ft}\n"
                + "spaces:\n  - {id: util, name: U, floor: g, kind: utility}\n"
                + "places:\n  - {id: pb, name: B, space: util, kind: pull_box, use: conduit}\n"
                + "conduits:\n"
                + conduit.formatted("2")
                + conduit.formatted("4")
                + conduit.formatted("3")
                + conduit.formatted("1").replace("{place: pb}", "{space: util}"));
    Assessments all = new Assessments(ConduitAssessor.of(Jobs.TABLES).assess(job));
    assertEquals(29, inches(all.find("pb", "conduit.box.angle").orElseThrow()), 1e-9);
    assertEquals(32, inches(all.find("pb", "conduit.box.straight").orElseThrow()), 1e-9);
  }

  @Test
  void aSizeThatIsNotKnownIsNamed() {
    ConduitHouse house =
        ConduitHouse.with(AT_BOX.replace("emt", "iec_rigid").replace("'2'", "'25'"))
            .place("pb", "pull_box");
    assertEquals(
        List.of(Phrase.of("conduit.missing.trade-size", "conduit", "C")),
        house.answer("conduit.box.angle").missing());
  }

  @Test
  void onlyPullBoxesWithConduitsAreSized() {
    assertFalse(ConduitHouse.with(AT_BOX).place("pb", "box").asks("conduit.box.straight"));
    assertFalse(ConduitHouse.ent1("").place("pb", "pull_box").asks("conduit.box.straight"));
  }

  private static double inches(Assessment answer) {
    return ((Length) answer.value().orElseThrow()).inInches();
  }
}
