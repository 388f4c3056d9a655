package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ConduitChecksTest {
  private static final String START =
      "- {id: c1, label: C-1, name: Chase, from: {head: rack}, to: {place: d1}, ";

  private static SmallHouse conduit(String rest) {
    return house().with("conduits", START + rest + "}");
  }

  private static SmallHouse clear(String rest) {
    return conduit("type: ent, trade_size: 1, pull_string: both_ends, condition: clear, " + rest);
  }

  private static String run(String conduits) {
    return "- {id: r1, label: K-01, cable: cat6, from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark"
        + conduits
        + "}";
  }

  @Test
  void aRunInAConduitNamesIt() {
    var finding = clear("contents: [¶r1]").with("runs", run("")).finds("conduit-contents-disagree");
    assertEquals(Optional.of("r1"), finding.found());

    clear("contents: [r1]")
        .with("runs", run(", conduits: [c1]"))
        .findsNo("conduit-contents-disagree");
  }

  @Test
  void aConduitListsTheRunsThatNameIt() {
    clear("spare: no").with("runs", run(", conduits: [¶c1]")).finds("run-not-in-conduit");
    clear("contents: [r1]").with("runs", run(", conduits: [c1]")).findsNo("run-not-in-conduit");
  }

  @Test
  void aConduitLeadsFromOnePointToAnother() {
    String rest =
        "label: C-1, name: C, type: ent, trade_size: 1, pull_string: none, condition: clear";
    house()
        .with("conduits", "- {id: c1, from: {place: d1}, to: ¶{place: d1}, " + rest + "}")
        .finds("conduit-ends-where-it-begins");
    house()
        .with("conduits", "- {id: c1, from: {place: d1}, to: {place: d2}, " + rest + "}")
        .findsNo("conduit-ends-where-it-begins");
  }

  /** ENT is made up to 2 in, EMT up to 4 in: NFPA 70 (NEC) chapter 9 table 4. */
  @Test
  void aFamilyIsMadeInItsSizesOnly() {
    String rest = ", pull_string: both_ends, condition: clear";
    conduit("type: ent, trade_size: 2" + rest).findsNo("unknown-trade-size");
    conduit("type: ent, trade_size: ¶3" + rest).finds("unknown-trade-size");
    conduit("type: emt, trade_size: 3" + rest).findsNo("unknown-trade-size");
    conduit("type: emt, trade_size: 1 1/4 in" + rest).findsNo("unknown-trade-size");
    conduit("type: emt, trade_size: 35" + rest).findsNo("unknown-trade-size");
    conduit("type: iec_pliable, trade_size: 25 mm" + rest).findsNo("unknown-trade-size");
    conduit("type: iec_rigid, trade_size: ¶24" + rest).finds("unknown-trade-size");
  }

  @Test
  void aSizeWithoutTableIsTakenByItsBore() {
    conduit("type: ent, trade_size: 3, bore: 77 mm, pull_string: none, condition: clear")
        .findsNo("unknown-trade-size");
  }

  @Test
  void aProvedConduitIsClear() {
    String proof = ", proved: {date: 2026-02-11, by: mandrel, size: 20 mm}";
    conduit("type: ent, trade_size: 1, pull_string: none, condition: ¶blocked" + proof)
        .finds("proved-conduit-not-clear");
    clear("spare: yes" + proof).findsNo("proved-conduit-not-clear");
  }

  @Test
  void aMandrelHasASizeAndAStringHasNone() {
    clear("proved: {date: 2026-02-11, by: ¶mandrel}").finds("proof-without-size");
    clear("proved: {date: 2026-02-11, by: mandrel, size: 20 mm}").findsNo("proof-without-size");
    clear("proved: {date: 2026-02-11, by: string_drawn}").findsNo("proof-without-size");
  }

  @Test
  void aCrushedConduitIsNotSpareWithoutAWord() {
    String crushed = "type: ent, trade_size: 1, pull_string: none, condition: ¶crushed";
    conduit(crushed + ", spare: yes").finds("unfit-conduit-called-spare");
    conduit(crushed.replace("¶", "") + ", spare: yes, note: flat near the rack")
        .findsNo("unfit-conduit-called-spare");
  }

  @Test
  void anUnfitConduitIsAnException() {
    String crushed = "type: ent, trade_size: 1, pull_string: none, condition: ¶crushed";
    conduit(crushed).finds("unfit-conduit-without-exception");
    conduit(crushed.replace("¶", ""))
        .with("exceptions", "- {id: x1, kind: damaged_not_replaced, what: Flat, conduit: c1}")
        .findsNo("unfit-conduit-without-exception");
  }

  @Test
  void aSpareConduitIsProved() {
    clear("spare: ¶yes").finds("spare-conduit-never-proved");
    clear("spare: yes, proved: {date: 2026-02-11, by: string_drawn}")
        .findsNo("spare-conduit-never-proved");
    clear("spare: no").findsNo("spare-conduit-never-proved");
  }

  @Test
  void aConduitKeepsAPullString() {
    String start = "type: ent, trade_size: 1, condition: clear, pull_string: ";
    conduit(start + "¶none").finds("conduit-without-pull-string");
    conduit(start + "¶unknown").finds("conduit-without-pull-string");
    conduit(start + "both_ends").findsNo("conduit-without-pull-string");
  }

  @Test
  void aConduitHasAPath() {
    house()
        .with(
            "conduits",
            "- ¶{id: c1, label: C-1, name: C, type: ent, trade_size: 1, from: {head: rack}, to: {place: d1}, pull_string: both_ends, condition: clear}")
        .finds("conduit-without-path");
    clear("path: [{straight: 10 ft}]").findsNo("conduit-without-path");
  }
}
