package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The den is 14 ft by 12 ft: walls A and C are 12 ft long, B and D 14 ft; its ceiling is at 9 ft.
 */
class PlaceChecksTest {
  private static SmallHouse place(String position) {
    return house()
        .with(
            "places",
            "- {id: d1, name: One, space: den, kind: wall_plate, use: data, " + position + "}");
  }

  @Test
  void aRoomOfFourCornersHasWallsAToD() {
    var finding = place("wall: ¶E, offset: 1 ft, height: 18 in").finds("unknown-wall");
    assertEquals(Optional.of("E"), finding.found());
    assertEquals("A, B, C, D", finding.expected().orElseThrow().arguments().get("choices"));

    place("wall: D, offset: 1 ft, height: 18 in").findsNo("unknown-wall");
  }

  @Test
  void anUnknownWallIsFoundOnHeadsOpeningsAndPhotosToo() {
    house()
        .with("heads", "- {id: rack, name: Rack, kind: rack, space: den, wall: ¶F, offset: 1 ft}")
        .finds("unknown-wall");
    house()
        .with(
            "photos",
            "- {file: photos/none.jpg, space: den, wall: ¶F, stage: rough_in, caption: Wall}")
        .finds("unknown-wall");
    house()
        .with(
            "spaces",
            "- {id: den, name: Den, floor: ground, kind: living, outline: [[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]], openings: [{wall: ¶F, kind: door, offset: 1 ft, width: 3 ft}]}",
            "- {id: util, name: Utility, floor: ground, kind: utility}")
        .finds("unknown-wall");
  }

  @Test
  void anOffsetMayBeAsLongAsTheWallAndTwoInchesOfTape() {
    place("wall: A, offset: 12 ft 2 in, height: 18 in").findsNo("place-beyond-wall");
    place("wall: A, offset: ¶12 ft 3 in, height: 18 in").finds("place-beyond-wall");
    place("wall: B, offset: 14 ft, height: 18 in").findsNo("place-beyond-wall");
  }

  @Test
  void aPointOnTheCeilingLiesWithinTheRoom() {
    place("at: [7 ft, 6 ft], height: 9 ft").findsNo("place-outside-room");
    place("at: [14 ft, 6 ft]").findsNo("place-outside-room");
    place("at: ¶[14 ft 3 in, 6 ft]").finds("place-outside-room");
  }

  @Test
  void aPlateIsNotBelowTheFinishedFloor() {
    place("wall: A, offset: 1 ft, height: 0 in").findsNo("height-below-floor");
    place("wall: A, offset: 1 ft, height: ¶-1 in").finds("height-below-floor");
  }

  @Test
  void aPlateIsNotAboveTheCeiling() {
    place("wall: A, offset: 1 ft, height: 9 ft").findsNo("height-above-ceiling");
    place("wall: A, offset: 1 ft, height: ¶9 ft 1 in").finds("height-above-ceiling");
  }
}
