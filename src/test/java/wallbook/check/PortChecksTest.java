package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.finding.Severity;

class PortChecksTest {
  private static SmallHouse runs(String firstFrom, String secondFrom) {
    return house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: cat6, from: {"
                + firstFrom
                + "}, to: {place: d1, jack: '1', finish: terminated}, condition: in_service}",
            "- {id: r2, label: K-02, cable: cat6, from: {"
                + secondFrom
                + "}, to: {place: d2, jack: '1', finish: terminated}, condition: in_service}");
  }

  @Test
  void aPortTakesOneRun() {
    var finding =
        runs(
                "head: rack, panel: P1, port: 7, finish: terminated",
                "head: rack, panel: P1, port: ¶7, finish: terminated")
            .finds("two-runs-on-one-port");

    assertEquals(Severity.ERROR, finding.severity());
    assertEquals(Optional.of("7"), finding.found());
  }

  @Test
  void oneNumberOnTwoPanelsIsTwoPorts() {
    runs(
            "head: rack, panel: P1, port: 7, finish: terminated",
            "head: rack, panel: B1, port: 7, finish: terminated")
        .findsNo("two-runs-on-one-port");
  }

  @Test
  void aJackTakesOneRun() {
    house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: cat6, from: {head: rack, panel: P1, port: 1, finish: terminated}, to: {place: d1, jack: '1', finish: terminated}, condition: in_service}",
            "- {id: r2, label: K-02, cable: cat6, from: {head: rack, panel: P1, port: 2, finish: terminated}, to: {place: d1, jack: ¶'1', finish: terminated}, condition: in_service}")
        .finds("two-runs-on-one-jack");
  }

  @Test
  void oneJackNumberOnTwoPlatesIsTwoJacks() {
    runs(
            "head: rack, panel: P1, port: 1, finish: terminated",
            "head: rack, panel: P1, port: 2, finish: terminated")
        .findsNo("two-runs-on-one-jack");
  }

  @Test
  void aMisspelledPanelIsReportedWithTheNearest() {
    var finding =
        runs(
                "head: rack, panel: P1, port: 1, finish: terminated",
                "head: rack, panel: ¶P2, port: 2, finish: terminated")
            .finds("unknown-panel");

    assertEquals(Optional.of("P1"), finding.nearest());
    runs(
            "head: rack, panel: P1, port: 1, finish: terminated",
            "head: rack, panel: B1, port: 2, finish: terminated")
        .findsNo("unknown-panel");
  }

  @Test
  void theLastPortIsAPortAndTheNextIsNot() {
    runs(
            "head: rack, panel: P1, port: 24, finish: terminated",
            "head: rack, panel: P1, port: 1, finish: terminated")
        .findsNo("port-beyond-panel");
    runs(
            "head: rack, panel: P1, port: ¶25, finish: terminated",
            "head: rack, panel: P1, port: 1, finish: terminated")
        .finds("port-beyond-panel");
    runs(
            "head: rack, panel: P1, port: ¶0, finish: terminated",
            "head: rack, panel: P1, port: 1, finish: terminated")
        .finds("port-beyond-panel");
  }

  @Test
  void aPortNeedsItsPanel() {
    runs(
            "head: rack, panel: P1, port: 3, finish: terminated",
            "head: rack, panel: P1, port: 1, finish: terminated")
        .findsNo("port-without-panel");
    runs(
            "head: rack, port: ¶3, finish: terminated",
            "head: rack, panel: P1, port: 1, finish: terminated")
        .finds("port-without-panel");
  }

  @Test
  void aTerminatedRunInServiceNeedsItsPort() {
    runs(
            "head: rack, panel: P1, port: 1, finish: terminated",
            "head: rack, panel: P1, port: 2, finish: terminated")
        .findsNo("port-not-recorded");
    house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: cat6, from: ¶{head: rack, finish: terminated}, to: {place: d1, finish: terminated}, condition: in_service}")
        .finds("port-not-recorded");
  }

  @Test
  void aWireScrewedToADeviceHasNoPort() {
    house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: control-22-4, from: {head: rack, finish: terminated, connector: hard_wired}, to: {place: d1, finish: terminated}, condition: in_service}")
        .findsNo("port-not-recorded");
  }

  @Test
  void aHeadHasOnePanelOfAName() {
    String head = "- {id: rack, name: Rack, kind: rack, space: util, panels: [";
    String first = "{id: P1, name: One, kind: patch_panel, ports: 24}, ";
    house()
        .with("heads", head + first + "{id: ¶P1, name: Two, kind: patch_panel, ports: 24}]}")
        .finds("duplicate-panel");
    house()
        .with("heads", head + first + "{id: P2, name: Two, kind: patch_panel, ports: 24}]}")
        .findsNo("duplicate-panel");
  }

  @Test
  void aPanelIsNoWiderThanItsPorts() {
    String head = "- {id: rack, name: Rack, kind: rack, space: util, panels: [";
    house()
        .with("heads", head + "{id: P1, name: One, kind: patch_panel, ports: 12, columns: 12}]}")
        .findsNo("panel-wider-than-its-ports");
    house()
        .with("heads", head + "{id: P1, name: One, kind: patch_panel, ports: 12, columns: ¶13}]}")
        .finds("panel-wider-than-its-ports");
  }
}
