package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;
import wallbook.finding.Severity;

/** Things that nothing else speaks of, exceptions, photographs, positions. */
class GapChecksTest {
  private static final String RUN =
      "- {id: r1, label: K-01, cable: cat6, from: {head: rack, panel: P1, port: 1, finish: terminated}, to: {place: d1, finish: terminated}, condition: in_service, system: net}";
  private static final String ONE_PLACE =
      "- {id: d1, name: One, space: den, kind: wall_plate, use: data, wall: A, offset: 3 ft, height: 18 in}";

  private static SmallHouse system(String facts) {
    return house()
        .with("job", "{id: s, title: S, revision: 1, handover: 2026-05-14}")
        .with("runs", RUN)
        .with("systems", "- {id: net, name: Network, kind: data_network" + facts + "}");
  }

  @Test
  void somethingEndsAtAPlace() {
    house().with("places", "- ¶" + ONE_PLACE.substring(2)).finds("place-without-runs");
    house()
        .with("places", ONE_PLACE)
        .with("runs", RUN.replace(", system: net", ""))
        .findsNo("place-without-runs");
    house()
        .with("places", ONE_PLACE.replace("wall_plate", "conduit_end"))
        .findsNo("place-without-runs");
    house()
        .with("places", ONE_PLACE)
        .with("exceptions", "- {id: x1, kind: promised_not_there, what: Contact, place: d1}")
        .findsNo("place-without-runs");
  }

  @Test
  void somethingEndsAtAHead() {
    String head =
        "id: rack, name: Rack, kind: rack, space: util, panels: [{id: P1, name: P, kind: patch_panel, ports: 24}]}";
    house().with("heads", "- ¶{" + head).finds("head-without-runs");
    house()
        .with("heads", "- {" + head)
        .with("runs", RUN.replace(", system: net", ""))
        .findsNo("head-without-runs");
  }

  @Test
  void aSystemHasRuns() {
    var finding =
        house()
            .with("systems", "- ¶{id: net, name: Network, kind: data_network}")
            .finds("system-without-runs");
    assertEquals(Severity.WARNING, finding.severity());

    system("").findsNo("system-without-runs");
  }

  @Test
  void aSystemThatIsOnlyDescribedIsARemark() {
    var finding =
        house()
            .with("systems", "- ¶{id: net, name: Network, kind: data_network, later: not yet}")
            .finds("system-without-runs");
    assertEquals(Severity.REMARK, finding.severity());
  }

  @Test
  void aSystemReachesARoom() {
    String between = RUN.replace("{place: d1, finish", "{head: rack, panel: P1, port: 2, finish");
    house()
        .with("runs", between)
        .with("systems", "- ¶{id: net, name: Network, kind: data_network}")
        .finds("system-without-place");
    house()
        .with("runs", between)
        .with("systems", "- {id: net, name: Service, kind: demarcation}")
        .findsNo("system-without-place");
    system("").findsNo("system-without-place");
  }

  @Test
  void aSystemInServiceIsDescribedAndShown() {
    String line = "- ¶{id: net, name: Network, kind: data_network";
    system("").with("systems", line + "}").finds("system-not-described");
    system(", works: Every room").findsNo("system-not-described");
    system("").with("systems", line + "}").finds("system-not-demonstrated");
    system(", demonstrated: 2026-05-12").findsNo("system-not-demonstrated");
  }

  @Test
  void anExceptionNamesSomething() {
    house()
        .with("exceptions", "- {id: x1, kind: changed, what: ¶Something}")
        .finds("exception-names-nothing");
    house()
        .with("exceptions", "- {id: x1, kind: changed, what: Something, place: d1}")
        .findsNo("exception-names-nothing");
  }

  @Test
  void aReplacementIsDescribed() {
    house()
        .with("exceptions", "- {id: x1, kind: ¶damaged_replaced, what: Cut, place: d1}")
        .finds("replacement-not-described");
    house()
        .with(
            "exceptions",
            "- {id: x1, kind: damaged_replaced, what: Cut, place: d1, stands_in: wireless contact}")
        .findsNo("replacement-not-described");
  }

  @Test
  void theOwnerAgreesToAnException() {
    house()
        .with("exceptions", "- {id: x1, kind: changed, what: ¶Moved, place: d1}")
        .finds("exception-not-agreed");
    house()
        .with("exceptions", "- {id: x1, kind: changed, what: Moved, place: d1, agreed: 2026-03-02}")
        .findsNo("exception-not-agreed");
  }

  @Test
  void aRunSaidToBeDamagedIsNotInService() {
    String exception = "- {id: x1, kind: damaged_not_replaced, what: Cut, run: r1}";
    house()
        .with("systems", "- {id: net, name: Network, kind: data_network}")
        .with("runs", RUN.replace("in_service", "¶in_service"))
        .with("exceptions", exception)
        .finds("damaged-run-in-service");
    house()
        .with("systems", "- {id: net, name: Network, kind: data_network}")
        .with("runs", RUN.replace("in_service", "damaged"))
        .with("exceptions", exception)
        .findsNo("damaged-run-in-service");
  }

  @Test
  void aPhotographShowsSomething() {
    house()
        .with("photos", "- ¶{file: a.jpg, stage: final, caption: A wall}")
        .finds("photo-of-nothing");
    house()
        .with("photos", "- {file: a.jpg, space: den, stage: final, caption: A wall}")
        .findsNo("photo-of-nothing");
  }

  @Test
  void aPlaceIsSomewhere() {
    String start = "id: d1, name: One, space: den, kind: wall_plate, use: data";
    house()
        .with("places", "- ¶{" + start + ", wall: A, offset: 3 ft}")
        .finds("position-incomplete");
    house().with("places", ONE_PLACE).findsNo("position-incomplete");
    house().with("places", "- {" + start + ", at: [3 ft, 3 ft]}").findsNo("position-incomplete");
  }

  @Test
  void nothingIsInServiceBehindABlankPlate() {
    house()
        .with("places", ONE_PLACE.replace("wall_plate", "¶blank_plate"))
        .with("runs", RUN.replace(", system: net", ""))
        .finds("blank-plate-in-service");
    house()
        .with("places", ONE_PLACE.replace("wall_plate", "blank_plate"))
        .with("runs", RUN.replace(", system: net", "").replace("in_service", "dark"))
        .findsNo("blank-plate-in-service");
  }

  @Test
  void twoBoxesAreAnInchApartAtLeast() {
    String second =
        "- {id: d2, name: Two, space: den, kind: wall_plate, use: data, wall: A, height: 18 in, offset: ";
    house().with("places", ONE_PLACE, second + "¶3 ft 0.9 in}").finds("two-places-at-one-spot");
    house().with("places", ONE_PLACE, second + "3 ft 1 in}").findsNo("two-places-at-one-spot");
  }

  @Test
  void aSpaceWithPlatesHasAnOutline() {
    String spaces = "id: den, name: Den, floor: ground, kind: living";
    String others =
        "- {id: util, name: U, floor: ground, kind: utility}\n- {id: garden, name: G, floor: ground, kind: garden}";
    house().with("spaces", "- ¶{" + spaces + "}", others).finds("space-without-outline");
    house()
        .with(
            "spaces",
            "- {" + spaces + ", outline: [[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft]]}",
            others)
        .findsNo("space-without-outline");
  }
}
