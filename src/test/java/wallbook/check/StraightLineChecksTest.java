package wallbook.check;

import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;

/** Lengths of straight lines by Pythagoras; half a foot is forgiven. */
class StraightLineChecksTest {
  /** From the point (4, 0) at 2 ft to (4, 12) at 2 ft + height on the upper floor, 10 ft above. */
  private static SmallHouse run(String length, String headHeight, String placeHeight) {
    return house()
        .with(
            "floors",
            "- {id: ground, name: Ground, level: 0, elevation: 0 ft}",
            "- {id: upper, name: Upper, level: 1, elevation: 10 ft}")
        .with(
            "spaces",
            "- {id: den, name: Den, floor: upper, kind: living, outline: [[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]]}",
            "- {id: util, name: Utility, floor: ground, kind: utility}",
            "- {id: garden, name: Garden, floor: ground, kind: garden}")
        .with(
            "heads",
            "- {id: rack, name: Rack, kind: rack, space: util, at: [4 ft, 0 ft]" + headHeight + "}")
        .with(
            "places",
            "- {id: d1, name: One, space: den, kind: wall_plate, use: data, wall: B, offset: 4 ft"
                + placeHeight
                + "}")
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: cat6, from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark, length: "
                + length
                + "}");
  }

  @Test
  void onThePlanTheEndsAreTwelveFeetApart() {
    run("¶11.4 ft", "", "").finds("length-shorter-than-straight-line");
    run("11.6 ft", "", "").findsNo("length-shorter-than-straight-line");
  }

  @Test
  void heightsAndFloorsCount() {
    // 12 ft along, 10 + 1 - 6 = 5 ft up: 13 ft.
    run("¶12.4 ft", ", height: 6 ft", ", height: 1 ft").finds("length-shorter-than-straight-line");
    run("12.6 ft", ", height: 6 ft", ", height: 1 ft").findsNo("length-shorter-than-straight-line");
  }
}
