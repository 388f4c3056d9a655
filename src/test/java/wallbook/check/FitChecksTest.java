package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class FitChecksTest {
  private static SmallHouse run(String cable, String from, String to) {
    return house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: "
                + cable
                + ", from: {head: rack, finish: terminated, "
                + from
                + "}, to: {place: d1, finish: terminated, "
                + to
                + "}, condition: in_service}");
  }

  @Test
  void coaxIsNotPunchedIntoAnEightPositionJack() {
    run("series-6", "connector: f_connector", "connector: ¶eight_position_jack")
        .finds("connector-does-not-fit-cable");
    run("series-6", "connector: f_connector", "connector: f_connector")
        .findsNo("connector-does-not-fit-cable");
  }

  @Test
  void fibreDoesNotEndOnAPatchPanelForPairs() {
    run("om3-2", "panel: ¶P1, port: 1", "connector: lc").finds("cable-on-wrong-panel");
    run("om3-2", "panel: F1, port: 1", "connector: lc").findsNo("cable-on-wrong-panel");
  }

  @Test
  void aWiringSchemeBelongsToBalancedPairs() {
    run("series-6", "connector: f_connector", "wiring: ¶t568b")
        .finds("wiring-scheme-on-other-cable");
    run("cat6", "panel: P1, port: 1", "wiring: t568b").findsNo("wiring-scheme-on-other-cable");
  }

  @Test
  void bothEndsFollowOneWiringScheme() {
    var finding =
        run("cat6", "wiring: t568b, panel: P1, port: 1", "wiring: ¶t568a")
            .finds("wiring-schemes-differ");
    assertEquals(Optional.of("t568b"), finding.nearest());

    run("cat6", "wiring: t568b, panel: P1, port: 1", "wiring: t568b")
        .findsNo("wiring-schemes-differ");
  }

  @Test
  void aWireMapCannotBeMadeOfFibre() {
    String test = "run: r1, date: 2026-04-20, result: pass, kind: ";
    run("om3-2", "panel: F1, port: 1", "connector: lc")
        .with("tests", "- {id: t1, " + test + "¶wire_map}")
        .finds("test-does-not-fit-cable");
    run("om3-2", "panel: F1, port: 1", "connector: lc")
        .with("tests", "- {id: t1, " + test + "continuity}")
        .findsNo("test-does-not-fit-cable");
  }
}
