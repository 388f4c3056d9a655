package wallbook.check;

import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;

class StubOutChecksTest {
  private static final String PLACE =
      "- {id: so, name: Stub-out, space: garden, kind: stub_out, use: landscape_audio, ties: [{from: ne, distance: 20 ft}, {from: se, distance: 25 ft}]}";
  private static final String RUN =
      "- {id: r1, label: K-01, cable: speaker-16-4-burial, from: {head: rack, finish: coiled}, to: {place: so, finish: coiled, slack: 10 ft}, condition: dark, environments: [buried]}";

  private static SmallHouse stubOut(String rest) {
    return house()
        .with("places", PLACE, "- {id: d1, name: Plate, space: den, kind: wall_plate, use: data}")
        .with("runs", RUN)
        .with("stub_outs", "- {id: s1, place: so, " + rest + "}");
  }

  @Test
  void whatIsCoiledThereEndsThere() {
    stubOut("coiled: [{run: ¶r1, length: 10 ft}]")
        .with("runs", RUN.replace("place: so", "place: d1"))
        .finds("coil-of-another-place");
    stubOut("coiled: [{run: r1, length: 10 ft}]").findsNo("coil-of-another-place");
  }

  @Test
  void theCoilIsTheSlackOfThatEnd() {
    stubOut("coiled: [{run: r1, length: 11 ft}]").findsNo("coil-differs-from-slack");
    stubOut("coiled: [{run: r1, length: ¶12 ft}]").finds("coil-differs-from-slack");
  }

  @Test
  void itsConduitEndsThere() {
    String conduit =
        "- {id: c1, label: C-1, name: C, type: pvc_40, trade_size: 1, from: {head: rack}, to: {place: so}, pull_string: both_ends, condition: clear}";
    stubOut("conduit: c1").with("conduits", conduit).findsNo("stub-out-of-another-conduit");
    stubOut("conduit: ¶c1")
        .with("conduits", conduit.replace("place: so", "place: d1"))
        .finds("stub-out-of-another-conduit");
  }

  @Test
  void aLineStillToLayHasSomebodyToLayIt() {
    stubOut("line_still_to_lay: ¶16-4 to four speakers").finds("line-without-layer");
    stubOut("line_still_to_lay: 16-4 to four speakers, line_by: landscaper")
        .findsNo("line-without-layer");
  }

  /** Six inches for landscape wiring of 30 V or less: NEC table 300.5, column 5. */
  @Test
  void itLiesSixInchesDeepOrMore() {
    stubOut("cover: 6 in").findsNo("cover-below-least");
    stubOut("cover: ¶5 in").finds("cover-below-least");
  }

  @Test
  void itsCoverIsRecorded() {
    house()
        .with("places", PLACE)
        .with("stub_outs", "- ¶{id: s1, place: so}")
        .finds("cover-not-recorded");
    stubOut("cover: 12 in").findsNo("cover-not-recorded");
  }

  @Test
  void itIsOutdoors() {
    house()
        .with("places", PLACE.replace("space: garden", "space: den"))
        .with("stub_outs", "- {id: s1, place: ¶so}")
        .finds("stub-out-indoors");
    stubOut("cover: 12 in").findsNo("stub-out-indoors");
  }
}
