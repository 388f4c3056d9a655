package wallbook.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.record.Job;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class DiscretionTest {
  private static final Job JOB =
      Jobs.job(
          """
          floors: [{id: g, name: Ground floor, level: 0, elevation: 0 ft}]
          spaces:
            - {id: hall, name: Hall, floor: g, kind: hall}
            - {id: drive, name: Driveway, floor: g, kind: driveway}
          heads:
            - {id: rack, name: Rack, kind: rack, space: hall,
               panels: [{id: P, name: Panel, kind: patch_panel, ports: 8}]}
            - {id: alarm, name: Panel by the door, kind: structured_panel, space: hall,
               panels: [{id: Z, name: Zones, kind: terminal_strip, ports: 8}]}
          systems:
            - {id: sec, name: Watchman, kind: security}
            - {id: net, name: Network, kind: data_network}
          places:
            - {id: eye, name: Post at the gate, label: G-A, space: drive, kind: device, use: camera}
            - {id: desk, name: Desk plate, space: hall, kind: wall_plate, use: data}
            - {id: pad, name: Wall unit, space: hall, kind: device, use: keypad}
          runs:
            - {id: r-1, label: D-01, cable: cat6, from: {head: rack, panel: P, port: 1, finish: terminated},
               to: {place: desk, finish: terminated}, condition: in_service, system: net}
            - {id: r-2, label: G-01, cable: cat6, from: {head: rack, panel: P, port: 2, finish: terminated},
               to: {place: eye, finish: terminated}, condition: in_service}
            - {id: r-3, label: H-01, cable: cat6, from: {head: alarm, panel: Z, port: 1, finish: terminated},
               to: {place: pad, finish: terminated}, condition: in_service}
            - {id: r-4, label: H-02, cable: cat6, from: {head: rack, panel: P, port: 3, finish: terminated},
               to: {place: desk, finish: terminated}, condition: in_service, system: sec}
          conduits:
            - {id: c-1, label: C-01, name: Duct, type: pvc_40, trade_size: "1", from: {head: rack},
               to: {place: eye}, pull_string: none, condition: clear}
          exceptions:
            - {id: x-1, kind: changed, what: Moved by a foot, place: eye}
            - {id: x-2, kind: changed, what: Moved by a foot, run: r-4}
            - {id: x-3, kind: changed, what: The keypad went to the other wall}
            - {id: x-4, kind: changed, what: The desk went to the other wall}
          """);

  private static final Wording WORDING =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES);
  private static final Discretion DISCRETION = new Discretion(JOB, WORDING);
  private static final Describe DESCRIBE = new Describe(JOB, WORDING);

  @Test
  void whatWatchesIsPrivateByUseOrBySystem() {
    assertTrue(DISCRETION.isPrivate(JOB.place("eye")));
    assertTrue(DISCRETION.isPrivate(JOB.run("r-2")), "ends at a camera");
    assertTrue(DISCRETION.isPrivate(JOB.run("r-4")), "belongs to security");
    assertFalse(DISCRETION.isPrivate(JOB.place("desk")));
    assertFalse(DISCRETION.isPrivate(JOB.run("r-1")));
  }

  @Test
  void aHeadIsPrivateWhenNothingButWatchingThingsComesHomeThere() {
    assertTrue(DISCRETION.isPrivate(JOB.head("alarm")));
    assertFalse(DISCRETION.isPrivate(JOB.head("rack")));
  }

  @Test
  void anEndAtAWatchingThingIsOnlyItsSpace() {
    assertEquals("Driveway", DISCRETION.end(JOB.conduit("c-1").to(), DESCRIBE));
    assertEquals("Driveway", DISCRETION.end(JOB.run("r-2").to(), DESCRIBE));
    assertEquals("Hall", DISCRETION.end(JOB.run("r-3").from(), DESCRIBE));
    assertEquals("Rack P, port 1", DISCRETION.end(JOB.run("r-1").from(), DESCRIBE));
  }

  @Test
  void exceptionsAreJudgedByWhatTheyConcernAndByTheirWords() {
    assertTrue(DISCRETION.isPrivate(JOB.exceptions().get(0)));
    assertTrue(DISCRETION.isPrivate(JOB.exceptions().get(1)));
    assertTrue(DISCRETION.isPrivate(JOB.exceptions().get(2)));
    assertFalse(DISCRETION.isPrivate(JOB.exceptions().get(3)));
  }

  @Test
  void aTextThatNamesAWatchingThingIsWithheldWhole() {
    assertTrue(DISCRETION.isTellable("Keep the hedge low"));
    assertFalse(
        DISCRETION.isTellable("Keep the hedge low before the POST AT THE GATE"), "its name");
    assertFalse(DISCRETION.isTellable("Spare beside G-01"), "its cable");
    assertFalse(DISCRETION.isTellable("Behind plate G-A"), "its plate");
    assertFalse(DISCRETION.isTellable("Two cameras see the drive"), "a word that says it");
    assertFalse(DISCRETION.isTellable("Ask Watchman"), "its system");
    assertEquals(Optional.empty(), DISCRETION.tellable(Optional.of("motion sensor above")));
  }

  @Test
  void partOfAnotherWordGivesNothingAway() {
    assertTrue(DISCRETION.isTellable("Ask the insecurity-free builder"));
  }

  @Test
  void labelsOfWatchingThingsAreLeftOut() {
    assertEquals("D-01", DISCRETION.labels(JOB.runs(), WORDING));
  }
}
