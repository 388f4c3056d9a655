package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;
import wallbook.finding.Severity;

class OutlineChecksTest {
  private static final String SOUND =
      "[[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]]";

  private static SmallHouse den(String outline) {
    return house().with("spaces", space("den", outline), bare("util"), bare("garden"));
  }

  private static String space(String id, String outline) {
    return "- {id: "
        + id
        + ", name: Room "
        + id
        + ", floor: ground, kind: living, outline: "
        + outline
        + "}";
  }

  private static String bare(String id) {
    return "- {id: " + id + ", name: " + id + ", floor: ground, kind: other_room}";
  }

  @Test
  void threeCornersEncloseARoomAndTwoDoNot() {
    den("[[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft]]").findsNo("outline-too-short");
    den("¶[[0 ft, 0 ft], [0 ft, 12 ft]]").finds("outline-too-short");
  }

  @Test
  void theFirstCornerIsNotRepeatedAtTheEnd() {
    den("¶[[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft], [0 ft, 0 ft]]")
        .finds("outline-repeats-corner");
    den(SOUND).findsNo("outline-repeats-corner");
  }

  @Test
  void cornersInTheWrongOrderMakeWallsCross() {
    den("¶[[0 ft, 0 ft], [14 ft, 12 ft], [0 ft, 12 ft], [14 ft, 0 ft]]")
        .finds("outline-crosses-itself");
    den(SOUND).findsNo("outline-crosses-itself");
  }

  @Test
  void cornersAreListedClockwise() {
    var finding =
        den("¶[[0 ft, 0 ft], [14 ft, 0 ft], [14 ft, 12 ft], [0 ft, 12 ft]]")
            .finds("outline-anticlockwise");
    assertEquals(Severity.ERROR, finding.severity());

    den(SOUND).findsNo("outline-anticlockwise");
  }

  @Test
  void roomsMayShareAWallButNotTheirFloor() {
    String touching = "[[14 ft, 0 ft], [14 ft, 12 ft], [20 ft, 12 ft], [20 ft, 0 ft]]";
    String overlapping = "[[13 ft, 0 ft], [13 ft, 12 ft], [20 ft, 12 ft], [20 ft, 0 ft]]";

    house()
        .with("spaces", space("den", SOUND), space("util", touching), bare("garden"))
        .findsNo("outlines-overlap");
    house()
        .with("spaces", space("den", SOUND), space("util", "¶" + overlapping), bare("garden"))
        .finds("outlines-overlap");
  }

  @Test
  void roomsOfTwoFloorsMayLieOverEachOther() {
    house()
        .with(
            "floors",
            "- {id: ground, name: Ground, level: 0, elevation: 0 ft}",
            "- {id: upper, name: Upper, level: 1, elevation: 10 ft}")
        .with(
            "spaces",
            space("den", SOUND),
            space("util", SOUND).replace("floor: ground", "floor: upper"),
            bare("garden"))
        .findsNo("outlines-overlap");
  }

  @Test
  void aGardenMaySurroundTheHouse() {
    String around = "[[-20 ft, -20 ft], [-20 ft, 40 ft], [40 ft, 40 ft], [40 ft, -20 ft]]";
    house()
        .with(
            "spaces",
            space("den", SOUND),
            bare("util"),
            space("garden", around).replace("kind: living", "kind: garden"))
        .findsNo("outlines-overlap");
  }
}
