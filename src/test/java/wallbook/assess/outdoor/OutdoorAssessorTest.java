package wallbook.assess.outdoor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wallbook.assess.wire.WireJobs.assumed;
import static wallbook.assess.wire.WireJobs.missing;
import static wallbook.assess.wire.WireJobs.only;
import static wallbook.assess.wire.WireJobs.outdoors;
import static wallbook.assess.wire.WireJobs.run;
import static wallbook.assess.wire.WireJobs.zone;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.outdoor.BurialCover.Least;
import wallbook.assess.outdoor.BurialCover.Surface;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.quantity.Voltage;
import wallbook.reference.Standing;

class OutdoorAssessorTest {

  private static String stubOut(String place, String more) {
    return "stub_outs: [{id: so, place: " + place + more + "}]\n";
  }

  private static double inches(Optional<Quantity> length) {
    return ((Length) length.orElseThrow()).inInches();
  }

  /** NEC table 300.5, column 5; column 1 above 30 V. */
  @ParameterizedTest
  @CsvSource({
    "24, GARDEN, 6", "24, CONCRETE, 6", "24, DRIVEWAY, 18", "24, STREET, 24",
    "30, GARDEN, 6", "31, GARDEN, 24", "70.7, DRIVEWAY, 18", "70.7, STREET, 24"
  })
  void leastCoverFollowsTheCodesTable(double volts, Surface surface, double inches) {
    Least least = new BurialCover(Jobs.TABLES).least(Voltage.volts(volts), surface);
    assertEquals(inches, least.cover().inInches(), 1e-9);
    assertEquals(volts <= 30, least.lowVoltage());
    assertTrue(least.source().citation().contains(volts <= 30 ? "column 5" : "column 1"));
  }

  @Test
  void concreteOverHigherVoltageIsNotInTheTable() {
    BurialCover cover = new BurialCover(Jobs.TABLES);
    Voltage voltage = Voltage.volts(70.7);
    assertThrows(NoSuchElementException.class, () -> cover.least(voltage, Surface.CONCRETE));
  }

  @ParameterizedTest
  @CsvSource({
    // place, cover, least in, verdict
    "stub, 5 in, 6, BEYOND",
    "stub, 6 in, 6, CONDITIONAL",
    "stub, 152.4 mm, 6, CONDITIONAL",
    "stub, 150 mm, 6, BEYOND",
    "gate, 12 in, 18, BEYOND",
    "gate, 18 in, 18, CONDITIONAL"
  })
  void coverIsJudgedByTheSurface(String place, String cover, double least, Verdict verdict) {
    List<Assessment> all =
        outdoors(run("r", "buriable", place, "dark", ""), stubOut(place, ", cover: " + cover));
    Assessment assessment = only(all, "so", "outdoor.cover");
    assertEquals(verdict, assessment.verdict());
    assertEquals(least, inches(assessment.limit()), 1e-9);
    assertEquals(inches(assessment.value()) - least, inches(assessment.margin()), 1e-9);
    assertEquals(List.of("outdoor.assume.analogy", "outdoor.assume.top"), assumed(assessment));
    assertEquals(Standing.CONFIRMED, assessment.source().standing());
  }

  @Test
  void higherVoltageIsJudgedAsDirectlyBuriedCable() {
    List<Assessment> line =
        outdoors(
            run("r", "buriable", "stub", "dark", ""),
            zone("landscape", ", line_voltage: 70.7 V", "")
                + stubOut("stub", ", cover: 12 in, zone: z"));
    Assessment cover = only(line, "so", "outdoor.cover");
    assertEquals(24, inches(cover.limit()), 1e-9);
    assertTrue(assumed(cover).contains("outdoor.assume.over"));
    List<Assessment> feed =
        outdoors(
            run("r", "buriable", "gate", "dark", ", feed: {voltage: 48 V, current: 1 A}"),
            stubOut("gate", ", cover: 12 in"));
    assertTrue(assumed(only(feed, "so", "outdoor.cover")).contains("outdoor.assume.over"));
    List<Assessment> coiled =
        outdoors(
            run("r", "buriable", "plate", "dark", ", feed: {voltage: 48 V, current: 1 A}"),
            stubOut("stub", ", cover: 12 in, coiled: [{run: r, length: 10 ft}]"));
    assertTrue(assumed(only(coiled, "so", "outdoor.cover")).contains("outdoor.assume.over"));
  }

  @Test
  void buriedStubOutWithoutACoverIsNotStated() {
    List<Assessment> all =
        outdoors(
            run("r", "buriable", "stub", "dark", ", environments: [buried]"), stubOut("stub", ""));
    assertEquals(List.of("outdoor.missing.cover"), missing(only(all, "so", "outdoor.cover")));
  }

  @Test
  void stubOutOfAConduitIsTakenAsBuried() {
    String conduit =
        "conduits: [{id: c, label: C, name: Conduit, type: pvc_40, trade_size: \"1\", from: {head: rack}, to: {place: stub}, pull_string: both_ends, condition: clear}]\n";
    List<Assessment> all =
        outdoors(
            run("r", "buriable", "stub", "dark", ""), conduit + stubOut("stub", ", conduit: c"));
    assertEquals(Verdict.NOT_STATED, only(all, "so", "outdoor.cover").verdict());
  }

  @Test
  void stubOutOnAWallIsNotAskedForItsCover() {
    assertEquals(
        List.of(), outdoors(run("r", "buriable", "stub", "dark", ""), stubOut("stub", "")));
  }

  @Test
  void lineStillToBeLaidIsToldItsLeastCover() {
    List<Assessment> all =
        outdoors(
            run("r", "buriable", "stub", "dark", ""),
            stubOut("stub", ", line_still_to_lay: 16-4 to the terrace"));
    assertEquals(6, inches(only(all, "so", "outdoor.cover-to-lay.garden").value()), 1e-9);
    Assessment drive = only(all, "so", "outdoor.cover-to-lay.driveway");
    assertEquals(18, inches(drive.value()), 1e-9);
    assertEquals(Verdict.INFORMATION, drive.verdict());
    assertTrue(assumed(drive).contains("outdoor.assume.analogy"));
  }

  @ParameterizedTest
  @CsvSource({
    // cable, environment, verdict, what decides
    "buriable, buried, WITHIN, outdoor.limit.marked.direct-burial",
    "wettable, buried, BEYOND, outdoor.limit.unmarked.buried",
    "sunproof, buried, BEYOND, outdoor.limit.unmarked.buried",
    "sunproof, outdoor_exposed, WITHIN, outdoor.limit.marked.sunlight-resistant",
    "buriable, outdoor_exposed, BEYOND, outdoor.limit.unmarked.outdoor-exposed",
    "wettable, outdoor_conduit, WITHIN, outdoor.limit.marked.wet-location",
    "buriable, outdoor_conduit, WITHIN, outdoor.limit.marked.direct-burial",
    "sunproof, outdoor_conduit, BEYOND, outdoor.limit.unmarked.outdoor-conduit"
  })
  void surroundingsAskForTheirMark(
      String cable, String environment, Verdict verdict, String decides) {
    List<Assessment> all =
        outdoors(run("r", cable, "stub", ", environments: [" + environment + "]"), "");
    Assessment mark = only(all, "r", "outdoor.mark." + environment.replace('_', '-'));
    assertEquals(verdict, mark.verdict());
    assertEquals(decides, mark.limitedBy().orElseThrow().key());
    assertEquals(Standing.FROM_MEMORY, mark.source().standing());
  }

  @Test
  void wetMarkServesBelowGroundOnlyInConduit() {
    String conduit =
        "conduits: [{id: c, label: C, name: Conduit, type: pvc_40, trade_size: \"1\", from: {head: rack}, to: {place: stub}, pull_string: both_ends, condition: clear}]\n";
    List<Assessment> all =
        outdoors(run("r", "wettable", "stub", ", environments: [buried], conduits: [c]"), conduit);
    Assessment mark = only(all, "r", "outdoor.mark.buried");
    assertEquals(Verdict.CONDITIONAL, mark.verdict());
    assertEquals(List.of("outdoor.assume.conduit"), assumed(mark));
  }

  @Test
  void cableWithoutMarksInTheRecordIsNotStated() {
    List<Assessment> all =
        outdoors(run("r", "speaker-16-4", "stub", ", environments: [in_wall, buried]"), "");
    assertEquals(1, all.size());
    assertEquals(List.of("outdoor.missing.marks"), missing(all.get(0)));
  }

  @Test
  void abandonedCableIsNotAskedForMarks() {
    assertEquals(
        List.of(),
        outdoors(run("r", "sunproof", "stub", "abandoned", ", environments: [buried]"), ""));
    assertEquals(
        1,
        outdoors(run("r", "sunproof", "stub", "damaged", ", environments: [buried]"), "").size());
  }
}
