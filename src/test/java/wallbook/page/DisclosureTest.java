package wallbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.compose.Discretion;
import wallbook.compose.disclosure.DisclosedJob;
import wallbook.compose.disclosure.DisclosureRules;
import wallbook.compose.disclosure.Recipient;
import wallbook.compose.page.PageView.Copy;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.SystemKind;

/** What a reader is not told. */
class DisclosureTest {
  private static final DisclosureRules RULES = new DisclosureRules(Jobs.TABLES);

  /** Usual care with alarm systems: what shows where a house watches is the owner's alone. */
  private static final Set<PlaceUse> WATCHING =
      Set.of(
          PlaceUse.KEYPAD,
          PlaceUse.CONTACT,
          PlaceUse.MOTION_SENSOR,
          PlaceUse.GLASS_BREAK_SENSOR,
          PlaceUse.REPEATER,
          PlaceUse.CAMERA);

  private static final String HOUSE =
      """
      floors:
        - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
      spaces:
        - id: den
          name: Den
          floor: ground
          kind: living
          outline: [[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]]
      heads:
        - id: rack
          name: Rack
          kind: rack
          space: den
          panels: [{id: P1, name: Patch panel, kind: patch_panel, ports: 4}]
      places:
        - {id: plate, name: Plate, space: den, kind: wall_plate, use: data}
        - {id: eye, name: Lookout, space: den, kind: device, use: camera}
      runs:
        - id: r1
          label: D-01
          cable: cat6
          from: {head: rack, panel: P1, port: 1, finish: terminated}
          to: {place: plate, finish: terminated}
          condition: in_service
        - id: r2
          label: D-02
          cable: cat6
          from: {head: rack, panel: P1, port: 2, finish: terminated}
          to: {place: eye, finish: terminated}
          condition: in_service
          conduits: [c1]
      conduits:
        - id: c1
          label: C-1
          name: Shared tube
          type: ent
          trade_size: "1"
          from: {head: rack}
          to: {place: eye}
          contents: [r1, r2]
          pull_string: none
          condition: unknown
      """;

  private static DisclosedJob told(Job job, Recipient recipient) {
    return DisclosedJob.of(
        job, RULES, recipient, new Discretion(job, SamplePage.ENGLISH)::isTellable);
  }

  @Test
  void theOwnerIsToldEverything() {
    Job job = Jobs.sample("lakeside");
    assertFalse(told(job, Recipient.OWNER).withholdsSomething());
    assertEquals(job.record(), told(job, Recipient.OWNER).job().record());
  }

  @Test
  void nothingThatWatchesIsOnThePage() {
    Job whole = Jobs.sample("lakeside");
    String text = Jsoup.parse(SamplePage.html("lakeside", Recipient.PAGE)).outerHtml();
    List<String> told = new ArrayList<>();
    for (Place place : whole.places()) {
      if (WATCHING.contains(place.use())) {
        for (String mark : List.of("place/" + place.id() + "\"", place.name())) {
          if (text.contains(mark)) {
            told.add(mark);
          }
        }
        for (Run run : whole.runsAt(place)) {
          if (text.contains(run.label())) {
            told.add(run.label());
          }
        }
      }
    }
    for (HouseSystem system : whole.systems()) {
      boolean watches = system.kind() == SystemKind.SECURITY || system.kind() == SystemKind.CAMERAS;
      if (watches && text.contains("system/" + system.id() + "\"")) {
        told.add(system.id());
      }
    }
    assertEquals(List.of(), told);
    assertFalse(text.contains("Security panel"));
  }

  @Test
  void theOwnersCopyHasWhatTheUsualOneLacks() {
    Job whole = Jobs.sample("lakeside");
    String text = SamplePage.html("lakeside", Recipient.OWNER);
    for (Place place : whole.places()) {
      assertTrue(text.contains("id=\"place/" + place.id() + "\""), place.id());
    }
    for (Head head : whole.heads()) {
      assertTrue(text.contains("id=\"head/" + head.id() + "\""), head.id());
    }
    assertEquals(Copy.OWNERS, SamplePage.view("lakeside", Recipient.OWNER).copy());
    assertEquals(Copy.REDUCED, SamplePage.view("lakeside", Recipient.PAGE).copy());
  }

  @Test
  void aHouseWithoutAnythingThatWatchesKeepsNothingBack() {
    assertEquals(Copy.PLAIN, SamplePage.view("flat", Recipient.PAGE).copy());
  }

  @Test
  void aCableToWhatWatchesIsKeptBackWithIt() {
    Job job = told(Jobs.job(HOUSE), Recipient.PAGE).job();
    assertEquals(List.of("D-01"), job.runs().stream().map(Run::label).toList());
    assertEquals(List.of("plate"), job.places().stream().map(Place::id).toList());
  }

  @Test
  void aSharedConduitStaysWithoutTheEndAndTheCableKeptBack() {
    Job job = told(Jobs.job(HOUSE), Recipient.PAGE).job();
    assertEquals(List.of("r1"), job.conduit("c1").contents());
    assertEquals("den", job.conduit("c1").to().space().orElseThrow());
  }

  @Test
  void aNoteThatTellsOfWhatIsKeptBackIsKeptBackToo() {
    Job job =
        Jobs.job(
            HOUSE.replace(
                "kind: wall_plate, use: data}",
                "kind: wall_plate, use: data, note: beside the Lookout}"));
    assertEquals("beside the Lookout", job.place("plate").note().orElseThrow());
    assertEquals(Optional.empty(), told(job, Recipient.PAGE).job().place("plate").note());
    assertEquals(
        "beside the Lookout", told(job, Recipient.OWNER).job().place("plate").note().orElseThrow());
  }

  /** It is of a plate that may be told, but would show the camera on the same wall. */
  @Test
  void aPhotographOfAWallWithSomethingKeptBackIsKeptBackToo() {
    String walled =
        HOUSE
                .replace("kind: wall_plate, use: data}", "kind: wall_plate, use: data, wall: A}")
                .replace("kind: device, use: camera}", "kind: device, use: camera, wall: %s}")
            + "photos: [{file: p.jpg, place: plate, wall: A, stage: final, caption: Plate}]\n";

    assertEquals(List.of(), told(Jobs.job(walled.formatted("A")), Recipient.PAGE).job().photos());
    assertEquals(1, told(Jobs.job(walled.formatted("B")), Recipient.PAGE).job().photos().size());
  }

  @Test
  void aConduitThatHoldsOnlyWhatIsKeptBackIsKeptBackToo() {
    Job job = Jobs.job(HOUSE.replace("contents: [r1, r2]", "contents: [r2]"));
    assertEquals(List.of(), told(job, Recipient.PAGE).job().conduits());
  }

  @Test
  void aHeadWhereOnlySuchCablesComeHomeIsKeptBack() {
    Job job =
        Jobs.job(HOUSE.replace("from: {head: rack, panel: P1, port: 1,", "from: {place: plate,"));
    assertEquals(List.of(), told(job, Recipient.TRADE).job().heads());
  }

  @Test
  void aPortInUseIsNotCalledFree() {
    Job job = Jobs.job(HOUSE);
    String page =
        Jsoup.parse(
                SamplePage.html(
                    job,
                    SamplePage.view(job, Recipient.PAGE, SamplePage.ENGLISH),
                    SamplePage.ENGLISH))
            .getElementById("port/rack/P1/2")
            .text();
    assertEquals("2 in use, not in this copy", page);
  }
}
