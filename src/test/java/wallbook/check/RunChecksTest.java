package wallbook.check;

import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;

class RunChecksTest {
  private static final String FROM = "from: {head: rack, panel: P1, port: 1, finish: terminated}, ";
  private static final String TO = "to: {place: d1, finish: terminated}, ";
  private static final String SOUND = "- {id: r1, label: K-01, cable: cat6, " + FROM + TO;

  private static SmallHouse run(String rest) {
    return house().with("runs", SOUND + rest + "}");
  }

  @Test
  void aRunLeadsFromOnePointToAnother() {
    String start = "- {id: r1, label: K-01, cable: cat6, condition: dark, ";
    house()
        .with(
            "runs", start + "from: {place: d1, finish: coiled}, to: {place: ¶d1, finish: coiled}}")
        .finds("run-ends-where-it-begins");
    house()
        .with(
            "runs",
            start
                + "from: {head: rack, panel: P1, port: 2, finish: coiled}, to: {head: ¶rack, panel: P1, port: 2, finish: coiled}}")
        .finds("run-ends-where-it-begins");
    house()
        .with(
            "runs",
            start
                + "from: {head: rack, panel: P1, port: 2, finish: coiled}, to: {head: rack, panel: P1, port: 3, finish: coiled}}")
        .findsNo("run-ends-where-it-begins");
  }

  @Test
  void aRunInServiceIsTerminatedAtBothEnds() {
    house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: cat6, condition: in_service, "
                + FROM
                + "to: {place: d1, finish: ¶coiled}}")
        .finds("loose-run-in-service");
    run("condition: in_service").findsNo("loose-run-in-service");
  }

  @Test
  void aDarkRunSaysWhy() {
    run("condition: ¶dark").finds("dark-run-without-reason");
    run("condition: dark, dark_reason: for later").findsNo("dark-run-without-reason");
    run("condition: in_service").findsNo("dark-run-without-reason");
  }

  @Test
  void aRunInServiceHasNoReasonForBeingDark() {
    run("condition: in_service, dark_reason: ¶for later").finds("reason-without-dark-run");
    run("condition: abandoned, dark_reason: cut").findsNo("reason-without-dark-run");
  }

  @Test
  void aStandInIsNamedForADamagedRunOnly() {
    String other =
        "- {id: r2, label: K-02, cable: cat6, condition: in_service, from: {head: rack, panel: P1, port: 2, finish: terminated}, to: {place: d2, finish: terminated}}";
    house()
        .with("runs", SOUND + "condition: in_service, stand_in: ¶r2}", other)
        .finds("stand-in-for-sound-run");
    house()
        .with("runs", SOUND + "condition: damaged, stand_in: r2}", other)
        .findsNo("stand-in-for-sound-run");
  }

  @Test
  void aStandInIsAnotherRunThatWorks() {
    String dead =
        "- {id: r2, label: K-02, cable: cat6, condition: damaged, from: {head: rack, panel: P1, port: 2, finish: terminated}, to: {place: d2, finish: terminated}}";
    house()
        .with("runs", SOUND + "condition: damaged, stand_in: ¶r2}", dead)
        .finds("stand-in-unfit");
    run("condition: damaged, stand_in: ¶r1").finds("stand-in-unfit");
    house()
        .with("runs", SOUND + "condition: damaged, stand_in: r2}", dead.replace("damaged", "dark"))
        .findsNo("stand-in-unfit");
  }

  @Test
  void theLengthIncludesTheSlackOfBothEnds() {
    String ends =
        "from: {head: rack, panel: P1, port: 1, finish: terminated, slack: 6 ft}, to: {place: d1, finish: terminated, slack: 4 ft}, ";
    String start = "- {id: r1, label: K-01, cable: cat6, condition: in_service, " + ends;
    house().with("runs", start + "length: 10 ft}").findsNo("slack-beyond-length");
    house().with("runs", start + "length: ¶9 ft}").finds("slack-beyond-length");
  }

  @Test
  void aFeedNeedsItsLoad() {
    run("condition: in_service, feed: ¶{voltage: 12 V}").finds("feed-without-load");
    run("condition: in_service, feed: {voltage: 12 V, current: 150 mA}")
        .findsNo("feed-without-load");
  }

  @Test
  void fourConductorsGiveTwoForEachPole() {
    String feed =
        "condition: in_service, feed: {voltage: 12 V, power: 5 W, conductors_in_parallel: ";
    house()
        .with("runs", (SOUND + feed + "2}}").replace("cat6", "control-18-4"))
        .findsNo("more-conductors-than-there-are");
    house()
        .with("runs", (SOUND + feed + "¶3}}").replace("cat6", "control-18-4"))
        .finds("more-conductors-than-there-are");
  }

  @Test
  void aRunInServiceHasATest() {
    house()
        .with("runs", "- ¶" + SOUND.substring(2) + "condition: in_service}")
        .finds("run-without-test");
    run("condition: in_service")
        .with("tests", "- {id: t1, run: r1, date: 2026-04-20, kind: verification, result: pass}")
        .findsNo("run-without-test");
  }

  @Test
  void aTerminatedDarkDataRunHasATestButNotACoiledOrAbandonedOne() {
    house().with("runs", "- ¶" + SOUND.substring(2) + "condition: dark}").finds("run-without-test");
    house()
        .with(
            "runs",
            SOUND.replace("d1, finish: terminated", "d1, finish: coiled") + "condition: dark}")
        .findsNo("run-without-test");
    run("condition: abandoned").findsNo("run-without-test");
  }

  @Test
  void aRunInServiceSaysWhatFor() {
    house()
        .with("runs", "- ¶" + SOUND.substring(2) + "condition: in_service}")
        .finds("run-without-purpose");
    run("condition: in_service, serves: television").findsNo("run-without-purpose");
  }

  @Test
  void aUsefulRunHasALength() {
    house()
        .with("runs", "- ¶" + SOUND.substring(2) + "condition: in_service}")
        .finds("run-without-length");
    run("condition: in_service, length: 118 ft").findsNo("run-without-length");
    run("condition: abandoned").findsNo("run-without-length");
  }

  @Test
  void aDamagedRunHasAStandInOrAnException() {
    run("condition: ¶damaged").finds("damaged-run-without-stand-in");
    run("condition: damaged")
        .with("exceptions", "- {id: x1, kind: damaged_not_replaced, what: Cut, run: r1}")
        .findsNo("damaged-run-without-stand-in");
  }
}
