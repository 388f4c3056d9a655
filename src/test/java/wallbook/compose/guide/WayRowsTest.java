package wallbook.compose.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallbook.assess.outlook.UpgradeHouse;
import wallbook.assess.outlook.WishAnswer;
import wallbook.compose.Composition;
import wallbook.compose.guide.GuideView.WayRow;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;

class WayRowsTest {

  @Test
  void waysThatDifferOnlyInTheirCableMakeOneRow() {
    UpgradeHouse house =
        new UpgradeHouse()
            .dark("one", "cat6", "den-data")
            .dark("two", "cat6", "den-data")
            .dark("three", "cat6", "den-tv");

    List<WayRow> rows = rows(house, "music-in-one-more-room");

    assertEquals(1, rows.size());
    assertEquals(
        "one (Data plate), two (Data plate) or three (Television plate)", rows.get(0).cables());
  }

  @Test
  void theCableWithTheLeastMarginStandsForAll() {
    UpgradeHouse house =
        new UpgradeHouse()
            .run("near", "cat6", "den-data", "terminated", "dark", "length: 30 m")
            .run("far", "cat6", "den-data", "terminated", "dark", "length: 80 m");

    // IEEE 802.3 clause 40: 100 m of channel; with 10 m of cords 80 m leave 10 m, 32.8 ft.
    String margin = rows(house, "music-in-one-more-room").get(0).margins().get(0);

    assertTrue(margin.contains("margin +33\u00a0ft"), margin);
  }

  @Test
  void aConditionalAnswerSaysWhatItHangsOn() {
    UpgradeHouse house =
        new UpgradeHouse()
            .conduit("c", "head: rack", "place: den-tv", "unknown")
            .dark("r", "cat6", "den-data");

    WayRow pulled =
        rows(house, "more-wifi").stream()
            .filter(row -> row.cables().startsWith("c "))
            .findFirst()
            .orElseThrow();

    assertEquals("yes, if", pulled.verdict());
    assertEquals(
        List.of("not proved: draw a mandrel through before relying on it"), pulled.conditions());
  }

  @Test
  void thatEndsMustBeFinishedGoesWithoutSayingWhereItIsTheWork() {
    UpgradeHouse house =
        new UpgradeHouse().run("r", "om3-2", "den-tv", "coiled", "dark", "length: 60 ft");

    WayRow open =
        rows(house, "second-screen").stream()
            .filter(row -> row.cables().startsWith("r "))
            .findFirst()
            .orElseThrow();

    assertEquals("finish ends", open.effort());
    assertEquals(List.of(), open.conditions());
    assertEquals(1, open.general().size(), "the sender's table");
  }

  @Test
  void aCableHangsOnNothingThatIsTrueOfEveryCable() {
    WayRow only = rows(failed(), "music-in-one-more-room").get(0);

    assertEquals("yes, if", only.verdict());
    assertEquals(
        List.of(
            "the test of March 18, 2026 failed; holds only once that is put right and tested"
                + " again"),
        only.conditions());
  }

  @Test
  void whatAWayHangsOnIsNotDecidedByOtherCables() {
    UpgradeHouse alone = failed();
    UpgradeHouse among =
        failed().dark("other", "om3-2", "den-data").dark("third", "cat6", "den-data");

    assertEquals(ofR(alone), ofR(among));
  }

  /** A house whose one cable failed its test. */
  private static UpgradeHouse failed() {
    return new UpgradeHouse()
        .run("r", "cat6", "den-data", "terminated", "dark", "length: 60 ft")
        .with("tests:\n  - {id: t, run: r, date: 2026-03-18, kind: wire_map, result: fail}\n");
  }

  private static List<List<String>> ofR(UpgradeHouse house) {
    return rows(house, "music-in-one-more-room").stream()
        .filter(row -> row.cables().startsWith("r "))
        .map(WayRow::conditions)
        .toList();
  }

  @Test
  void aCableInServiceSaysWhatItServes() {
    UpgradeHouse house =
        new UpgradeHouse()
            .run(
                "r",
                "cat6",
                "den-data",
                "terminated",
                "in_service",
                "length: 60 ft, serves: the desk");

    assertEquals(
        List.of("r is in service (the desk): both uses share what it carries"),
        rows(house, "music-in-one-more-room").get(0).sharing());
  }

  @Test
  void anObstacleNamesItsStandIn() {
    UpgradeHouse house =
        new UpgradeHouse()
            .run("dead", "cat6", "den-ap", "unknown", "damaged", "length: 60 ft, stand_in: new")
            .dark("new", "cat6", "den-ap");
    Composition composition = Guides.of(house.job());

    assertEquals(
        List.of("dead (the cable is damaged; new stands in for it)"),
        new WayRows(composition, results(composition)).obstacles(house.in("den", "more-wifi")));
  }

  private static List<WayRow> rows(UpgradeHouse house, String wish) {
    Composition composition = Guides.of(house.job());
    WishAnswer answer = house.in("den", wish);
    return new WayRows(composition, results(composition)).all(answer);
  }

  private static Results results(Composition composition) {
    return new Results(composition.wording(), new SourceList());
  }
}
