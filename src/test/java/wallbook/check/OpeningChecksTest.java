package wallbook.check;

import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;

/** Wall B of the den is 14 ft long, its ceiling at 9 ft. */
class OpeningChecksTest {
  private static SmallHouse openings(String openings) {
    return house()
        .with(
            "spaces",
            "- {id: den, name: Den, floor: ground, kind: living, ceiling_height: 9 ft, outline: [[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]], openings: ["
                + openings
                + "]}",
            "- {id: util, name: Utility, floor: ground, kind: utility}");
  }

  @Test
  void anOpeningEndsWithItsWall() {
    openings("{wall: B, kind: door, offset: 11 ft, width: 3 ft}").findsNo("opening-beyond-wall");
    openings("{wall: B, kind: door, offset: 11 ft, width: ¶39 in}").finds("opening-beyond-wall");
  }

  @Test
  void aHeadIsAboveItsSill() {
    openings("{wall: B, kind: window, offset: 3 ft, width: 3 ft, sill: 36 in, head: ¶36 in}")
        .finds("opening-upside-down");
    openings("{wall: B, kind: window, offset: 3 ft, width: 3 ft, sill: 36 in, head: 37 in}")
        .findsNo("opening-upside-down");
  }

  @Test
  void anOpeningEndsBelowTheCeiling() {
    openings("{wall: B, kind: window, offset: 3 ft, width: 3 ft, head: 9 ft}")
        .findsNo("opening-above-ceiling");
    openings("{wall: B, kind: window, offset: 3 ft, width: 3 ft, head: ¶9 ft 1 in}")
        .finds("opening-above-ceiling");
  }

  @Test
  void openingsOfOneWallLieApart() {
    String first = "{wall: B, kind: window, offset: 3 ft, width: 3 ft, sill: 36 in, head: 80 in}, ";
    openings(first + "{wall: B, kind: window, offset: ¶5 ft, width: 3 ft}")
        .finds("openings-overlap");
    openings(first + "{wall: B, kind: window, offset: 6 ft, width: 3 ft}")
        .findsNo("openings-overlap");
    openings(first + "{wall: C, kind: window, offset: 5 ft, width: 3 ft}")
        .findsNo("openings-overlap");
    openings(first + "{wall: B, kind: window, offset: 4 ft, width: 2 ft, sill: 80 in, head: 96 in}")
        .findsNo("openings-overlap");
  }

  @Test
  void aPlateIsBesideADoorAndNotInIt() {
    String door = "{wall: B, kind: door, offset: 3 ft, width: 3 ft, head: 80 in}";
    String place =
        "- {id: d1, name: One, space: den, kind: wall_plate, use: data, wall: B, height: 18 in, offset: ";
    openings(door).with("places", place + "¶4 ft}").finds("place-in-opening");
    openings(door).with("places", place + "3 ft}").findsNo("place-in-opening");
    openings(door).with("places", place + "6 ft}").findsNo("place-in-opening");
    openings(door)
        .with("places", (place + "4 ft}").replace("18 in", "84 in"))
        .findsNo("place-in-opening");
    openings(door)
        .with("places", (place + "4 ft}").replace("use: data", "use: contact"))
        .findsNo("place-in-opening");
  }
}
