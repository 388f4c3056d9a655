package wallbook.check;

import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TieChecksTest {
  private static SmallHouse ties(double base, String ties) {
    return house()
        .with(
            "corners",
            "- {id: a, name: corner A, at: [0 ft, 0 ft]}",
            "- {id: b, name: corner B, at: [" + base + " ft, 0 ft]}")
        .with(
            "places",
            "- {id: so, name: Stub-out, space: garden, kind: stub_out, use: landscape_audio, "
                + ties
                + "}");
  }

  private static String two(double r, double s, String mark) {
    return "ties: [{from: a, distance: " + r + " ft}, {from: b, distance: " + mark + s + " ft}]";
  }

  /** Two circles meet if no side of the triangle is longer than the others together. */
  @ParameterizedTest
  @CsvSource({"10, 6, 8", "14, 13, 15", "20, 15, 17", "30, 18, 25", "12, 5, 7"})
  void tiesThatMeetAreSilent(double base, double r, double s) {
    ties(base, two(r, s, "")).findsNo("ties-contradict");
  }

  /** The same with r + s < b, and with |r − s| > b. */
  @ParameterizedTest
  @CsvSource({"12, 4, 3", "12, 20, 7", "12, 7, 20"})
  void tiesThatCannotMeetAreAnError(double base, double r, double s) {
    ties(base, two(r, s, "¶")).finds("ties-contradict");
  }

  @Test
  void anInchOfTapeIsForgiven() {
    ties(12, two(5, 6.91, "")).findsNo("ties-contradict");
    ties(12, two(5, 6.89, "¶")).finds("ties-contradict");
  }

  @Test
  void aStubOutHasTiesFromTwoCorners() {
    ties(10, two(6, 8, "")).findsNo("stub-out-without-ties");
    ties(10, "ties: ¶[{from: a, distance: 6 ft}]").finds("stub-out-without-ties");
    ties(10, "ties: ¶[{from: a, distance: 6 ft}, {from: a, distance: 6 ft}]")
        .finds("stub-out-without-ties");
  }

  @Test
  void aStubOutInAWallIsFoundByItsWall() {
    ties(10, "wall: A, offset: 3 ft, height: 1 ft").findsNo("stub-out-without-ties");
  }

  /** (3.6, 4.8) is 6 from (0, 0) and 8 from (10, 0). */
  @Test
  void thePlanAndTheTiesAgree() {
    ties(10, "at: [3.6 ft, 4.8 ft], " + two(6, 8, "")).findsNo("tie-differs-from-plan");
    ties(10, "at: [3.6 ft, 4.8 ft], " + two(6, 8.14, "")).findsNo("tie-differs-from-plan");
    ties(10, "at: [3.6 ft, 4.8 ft], " + two(6, 8.16, "¶")).finds("tie-differs-from-plan");
  }
}
