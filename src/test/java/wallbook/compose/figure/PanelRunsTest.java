package wallbook.compose.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.compose.asbuilt.AsBuiltComposer;
import wallbook.compose.asbuilt.AsBuiltView.HeadSchedule;
import wallbook.compose.asbuilt.AsBuiltView.PortRow;
import wallbook.compose.asbuilt.AsBuiltView.RunRow;
import wallbook.record.Head;
import wallbook.record.Job;

/** A cable that hangs in a rack at no port is not lost from the rack's papers. */
class PanelRunsTest {
  private static final Job JOB =
      Jobs.job(
          """
          floors: [{id: g, name: Ground, level: 0, elevation: 0 m}]
          spaces: [{id: den, name: Den, floor: g, kind: living}]
          heads:
            - {id: rack, name: Rack, kind: rack, space: den,
               panels: [{id: P1, name: Patch panel, kind: patch_panel, ports: 6}]}
          places:
            - {id: desk, name: Desk, space: den, kind: wall_plate, use: data}
          runs:
            - {id: a, label: D-01, cable: cat6, condition: in_service,
               from: {head: rack, panel: P1, port: 2, finish: terminated},
               to: {place: desk, finish: terminated}}
            - {id: b, label: D-02, cable: cat6, condition: dark,
               from: {place: desk, finish: capped}, to: {head: rack, finish: coiled}}
          """);

  private static final Head RACK = JOB.head("rack");

  @Test
  void aRunAtNoPortIsGivenWithItsEndHereAndTheOther() {
    List<PanelRuns.Loose> loose = PanelRuns.loose(JOB, RACK);

    assertEquals(List.of("D-02"), loose.stream().map(l -> l.run().label()).toList());
    assertEquals(JOB.run("b").to(), loose.get(0).near());
    assertEquals(JOB.run("b").from(), loose.get(0).other());
  }

  @Test
  void theScheduleOfTheRackHasItBesideThePanel() {
    HeadSchedule rack = new AsBuiltComposer(Composed.of(JOB), Jobs.TABLES).compose().heads().get(0);

    assertEquals(
        List.of("D-01"), rack.panels().get(0).ports().stream().map(PortRow::label).toList());
    assertEquals(List.of("D-02"), rack.loose().stream().map(RunRow::label).toList());
  }
}
