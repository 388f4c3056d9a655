package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Diameter;
import wallbook.quantity.Ratio;
import wallbook.wording.Phrase;

class RoomQuestionsTest {

  @Test
  void sixOfACategory6CableFitOneInch() {
    // 0.4/0.0625 = 6.4 → 6, 37.5 %; a seventh would be 43.75 %
    Assessment more = ConduitHouse.ent1("").answer("conduit.more.cat6.table-1");
    assertEquals(Count.of(6), more.value().orElseThrow());
    assertEquals(Verdict.WITHIN, more.verdict());
    Phrase next = more.limitedBy().orElseThrow();
    assertEquals(43.75, ((Ratio) next.arguments().get("fill")).inPercent(), 1e-6);
    assertEquals(40, ((Ratio) next.arguments().get("limit")).inPercent(), 1e-6);
  }

  @Test
  void bothRulesAnswer() {
    // 1/2 ENT, 0.25 in: one by table 1 (two are 39.86 % of 31 %), two by the flat 40 %
    ConduitHouse house = small("");
    assertEquals(Count.of(1), house.answer("conduit.more.cat6.table-1").value().orElseThrow());
    assertEquals(Count.of(2), house.answer("conduit.more.cat6.flat-40").value().orElseThrow());
  }

  @Test
  void whatIsFullTakesNothing() {
    Assessment more = small("").holding("cat6", "cat6").answer("conduit.more.cat6.flat-40");
    assertEquals(Count.of(0), more.value().orElseThrow());
    assertEquals(Verdict.BEYOND, more.verdict());
    // three of 0.25 in in 0.56 in: 3 × 0.0625/0.3136 = 59.79 %
    Phrase next = more.limitedBy().orElseThrow();
    assertEquals(59.79, ((Ratio) next.arguments().get("fill")).inPercent(), 0.01);
  }

  @Test
  void drawingInOverOtherCablesIsWarnedAgainst() {
    assertTrue(assumes(ConduitHouse.ent1("").holding("cat6"), "conduit.assume.pull-by"));
    assertFalse(assumes(ConduitHouse.ent1(""), "conduit.assume.pull-by"));
  }

  @Test
  void threeThatMayJamAreWarnedAgainst() {
    // 1 in ENT: 0.35 in, D/d 2.857, three fit (36.75 %): in the code's range; 0.25 in, 4.0: not
    assertTrue(
        keys(ConduitHouse.ent1("").answer("conduit.more.speaker-14-2.flat-40"))
            .contains("conduit.room.three-may-jam"));
    assertFalse(
        keys(ConduitHouse.ent1("").answer("conduit.more.cat6.flat-40"))
            .contains("conduit.room.three-may-jam"));
    // beside others the rule does not speak
    assertFalse(
        keys(ConduitHouse.ent1("")
                .holding("control-22-2")
                .answer("conduit.more.speaker-14-2.flat-40"))
            .contains("conduit.room.three-may-jam"));
  }

  @Test
  void theThickestFurtherCableIsGivenByBothRules() {
    ConduitHouse house = ConduitHouse.ent1("");
    // alone √0.53 = 0.728; by the flat share √0.40 = 0.632
    assertEquals(0.728, inches(house.answer("conduit.largest-cable.table-1")), 0.0005);
    assertEquals(0.632, inches(house.answer("conduit.largest-cable.flat-40")), 0.0005);
    ConduitHouse two = ConduitHouse.ent1("").holding("cat6", "cat6");
    assertEquals(0.5244, inches(two.answer("conduit.largest-cable.table-1")), 0.0001);
  }

  @Test
  void whatTheThickestCableAssumesIsSaid() {
    assertEquals(
        List.of("conduit.assume.pull-by", "conduit.assume.generic"),
        keys(ConduitHouse.ent1("").holding("cat6").answer("conduit.largest-cable.flat-40")));
    assertTrue(
        keys(ConduitHouse.ent1("").holding("cat6").answer("conduit.free-bore"))
            .contains("conduit.assume.generic"));
    assertEquals(List.of(), keys(ConduitHouse.ent1("").answer("conduit.largest-cable.flat-40")));
  }

  @Test
  void aFullConduitTakesNoFurtherCable() {
    Assessment largest =
        small("").holding("cat6", "cat6", "cat6").answer("conduit.largest-cable.flat-40");
    assertEquals(Verdict.BEYOND, largest.verdict());
    assertEquals(0, inches(largest), 0);
  }

  @Test
  void aCableWithoutDiameterIsNamed() {
    Assessment more =
        ConduitHouse.ent1("")
            .cable("odd", "medium: coax, coax: series_6")
            .answer("conduit.more.odd.table-1");
    assertEquals(List.of(Phrase.of("conduit.missing.diameter", "cable", "odd")), more.missing());
  }

  @ParameterizedTest
  @CsvSource({
    "condition: crushed,BEYOND,conduit.clearance.crushed",
    "condition: blocked,BEYOND,conduit.clearance.blocked"
  })
  void aCrushedOrBlockedConduitTakesNothingHoweverItWasProved(
      String state, Verdict verdict, String reason) {
    ConduitHouse house =
        ConduitHouse.with(
            "type: ent, trade_size: '1', pull_string: none, "
                + state
                + ", proved: {date: 2026-02-11, by: mandrel, size: 1 in}");
    for (String topic :
        List.of(
            "conduit.more.cat6.table-1",
            "conduit.more.cat6.flat-40",
            "conduit.largest-cable.table-1",
            "conduit.free-bore",
            "conduit.head.8p8c",
            "conduit.largest-head")) {
      Assessment answer = house.answer(topic);
      assertEquals(verdict, answer.verdict(), topic);
      assertEquals(reason, answer.limitedBy().orElseThrow().key(), topic);
    }
    assertEquals(verdict, house.answer("conduit.clear").verdict());
    // six would fit a clear 1 in ENT (37.5 %)
    Assessment more = house.answer("conduit.more.cat6.table-1");
    assertEquals(Count.of(0), more.value().orElseThrow());
    assertTrue(
        more.assumptions()
            .contains(Phrase.of("conduit.clearance.once-clear", "value", Count.of(6))));
    assertEquals(0, inches(house.answer("conduit.largest-cable.table-1")), 0);
    assertTrue(house.answer("conduit.head.8p8c").margin().isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "condition: clear|conduit.clearance.not-proved",
        "condition: unknown|conduit.clearance.not-proved",
        "condition: clear, proved: {date: 2026-02-11, by: string_drawn}|conduit.clearance.line-only",
        "condition: clear, proved: {date: 2026-02-11, by: blown_line}|conduit.clearance.line-only",
        "condition: unknown, proved: {date: 2026-02-11, by: slug, size: 1 in}|conduit.clearance.unknown-since"
      })
  void whatWasNotProvedIsConditional(String state, String reason) {
    ConduitHouse house =
        ConduitHouse.with("type: ent, trade_size: '1', pull_string: none, " + state);
    for (String topic :
        List.of(
            "conduit.more.cat6.table-1",
            "conduit.largest-cable.flat-40",
            "conduit.free-bore",
            "conduit.largest-head")) {
      assertEquals(Verdict.CONDITIONAL, house.answer(topic).verdict(), topic);
    }
    Assessment more = house.answer("conduit.more.cat6.table-1");
    assertEquals(reason, more.limitedBy().orElseThrow().key());
    assertTrue(keys(more).contains("conduit.room.one-too-many"));
    assertEquals(reason, house.answer("conduit.clear").limitedBy().orElseThrow().key());
    assertEquals(Verdict.CONDITIONAL, house.answer("conduit.clear").verdict());
  }

  @Test
  void whatDoesNotFitStaysBeyondWhateverIsProved() {
    Assessment more = small("").holding("cat6", "cat6").answer("conduit.more.cat6.table-1");
    assertEquals(Verdict.BEYOND, more.verdict());
    assertEquals("conduit.room.one-too-many", more.limitedBy().orElseThrow().key());
    assertTrue(keys(more).contains("conduit.clearance.not-proved"));
  }

  @Test
  void aSlugProvesItsOwnSizeOnly() {
    ConduitHouse house =
        ConduitHouse.with(
            "type: ent, trade_size: '1', pull_string: none, condition: clear,"
                + " proved: {date: 2026-02-11, by: slug, size: 0.3 in}");
    assertEquals(Verdict.WITHIN, house.answer("conduit.more.cat6.flat-40").verdict()); // 0.25 in
    Assessment thick = house.answer("conduit.more.speaker-14-2.flat-40"); // 0.35 in
    assertEquals(Verdict.CONDITIONAL, thick.verdict());
    assertEquals("conduit.clearance.proved-to", thick.limitedBy().orElseThrow().key());
    assertEquals(Diameter.inches(0.3).inInches(), inches(house.answer("conduit.clear")), 1e-9);
  }

  @Test
  void aMandrelOfUnrecordedSizeProvesTheBore() {
    ConduitHouse house =
        ConduitHouse.with(
            "type: ent, trade_size: '1', pull_string: none, condition: clear,"
                + " proved: {date: 2026-02-11, by: mandrel}");
    assertEquals(Verdict.WITHIN, house.answer("conduit.more.cat6.flat-40").verdict());
    assertEquals(Verdict.WITHIN, house.answer("conduit.clear").verdict());
    assertTrue(house.answer("conduit.clear").value().isEmpty());
  }

  private static ConduitHouse small(String further) {
    return ConduitHouse.with(
        "type: ent, trade_size: 1/2, pull_string: none, condition: clear" + further);
  }

  private static boolean assumes(ConduitHouse house, String key) {
    return keys(house.answer("conduit.more.cat6.flat-40")).contains(key);
  }

  private static double inches(Assessment answer) {
    return ((Diameter) answer.value().orElseThrow()).inInches();
  }

  private static List<String> keys(Assessment answer) {
    return answer.assumptions().stream().map(Phrase::key).toList();
  }
}
