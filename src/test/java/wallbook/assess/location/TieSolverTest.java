package wallbook.assess.location;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.wording.Phrase;

/** Triangles of whole numbers: 13 and 15 from corners 14 apart meet 5 along and 12 off. */
class TieSolverTest {

  @Test
  void theGardenDecidesTheSide() {
    TiedPoint.Found found = found(Grounds.drawn().tied("a 13 ft, b 15 ft"));
    assertAt(5, -12, found);
    assertFalse(found.onLeft()); // south, looking east from a to b, is on the right
    assertEquals(59.49, found.angle().inDegrees(), 0.01);
    assertEquals(0.0821, found.ellipse().orElseThrow().rootMeanSquare().inFeet(), 0.0001);
  }

  @Test
  void theHouseDecidesWhereTheGardenHasNoOutline() {
    TiedPoint.Found found = found(Grounds.with(Grounds.HOUSE, "").tied("b 15 ft, a 13 ft"));
    assertAt(5, -12, found);
    assertTrue(found.onLeft()); // looking west from b to a
  }

  @Test
  void theGardenDecidesWhereTheHouseHasNoOutline() {
    assertAt(5, -12, found(Grounds.with("", Grounds.GARDEN).tied("a 13 ft, b 15 ft")));
  }

  @Test
  void aFloorThatOverhangsTheGardenDoesNotStandInIt() {
    // the loft reaches 5 ft over the garden: (5, −3) lies under it; 5.831 = √34, 9.487 = √90
    TiedPoint.Found found = found(Grounds.drawn().tied("a 5.83095 ft, b 9.48683 ft"));
    assertAt(5, -3, found);
  }

  @Test
  void theRoomsOfTheAreasOwnLevelStandInIt() {
    // a terrace on the upper floor: the loft covers both mirror points
    TiedPoint.Impossible impossible =
        assertInstanceOf(
            TiedPoint.Impossible.class,
            Grounds.drawn().gardenOn("upper").tied("a 5.83095 ft, b 9.48683 ft").solved());
    assertEquals("location.ties.nowhere", impossible.reason().key());
  }

  @ParameterizedTest
  @CsvSource({"'c 22.36068 ft, e 36.05551 ft',false", "'e 36.05551 ft, c 22.36068 ft',true"})
  void theSideIsSeenFromTheFirstCornerWhereverItIs(String ties, boolean left) {
    // (30, −20): √(10² + 20²) from c (40, 0), √(30² + 20²) from e (60, −40); its mirror (62, −4)
    // lies beyond this garden; looking from c to e, which goes down to the right, it is on the
    // right
    TiedPoint.Found found =
        found(
            Grounds.with(
                    "", ", outline: [[0 ft, -50 ft], [0 ft, 0 ft], [45 ft, 0 ft], [45 ft, -50 ft]]")
                .tied(ties));
    assertAt(30, -20, found);
    assertEquals(left, found.onLeft());
  }

  @Test
  void mirrorPointsThatAdjustToOneAreOne() {
    // 7.02 from both a and b: (7, ±0.53); from e to (7, −0.5): √(53² + 39.5²) = 66.101
    TiedPoint.Found found = found(Grounds.with("", "").tied("a 7.02 ft, b 7.02 ft, e 66.101 ft"));
    assertEquals(7, found.point().x().inFeet(), 0.1);
    assertEquals(-0.5, found.point().y().inFeet(), 0.2);
  }

  @Test
  void withoutOutlinesTheSideIsNotKnown() {
    TiedPoint.Unknown unknown =
        assertInstanceOf(
            TiedPoint.Unknown.class, Grounds.with("", "").tied("a 13 ft, b 15 ft").solved());
    assertEquals(List.of(Phrase.of("location.missing.side")), unknown.missing());
  }

  @Test
  void aThirdTieFromOffTheLineDecidesTheSide() {
    // (5, −12) from e (60, −40): √(55² + 28²) = 61.717; (5, 12): √(55² + 52²) = 75.690
    TiedPoint.Found found = found(Grounds.with("", "").tied("a 13 ft, b 15 ft, e 61.717 ft"));
    assertAt(5, -12, found);
    assertEquals(3, found.adjustment().orElseThrow().residuals().size());
  }

  @Test
  void aThirdTieFromTheSameLineDoesNotDecideTheSide() {
    // c (40, 0): √(35² + 12²) = 37
    assertInstanceOf(
        TiedPoint.Unknown.class, Grounds.with("", "").tied("a 13 ft, b 15 ft, c 37 ft").solved());
    assertAt(5, -12, found(Grounds.drawn().tied("a 13 ft, b 15 ft, c 37 ft")));
  }

  @Test
  void theTwoTiesThatCrossBestAreNamed() {
    // at (5, −12): a–b 59.5°, a–c 22.6 + 71.1 = 93.7°, b–c 34.2°
    TiedPoint.Found found = found(Grounds.drawn().tied("a 13 ft, b 15 ft, c 37 ft"));
    assertEquals(
        List.of("corner A", "corner C"), found.best().stream().map(CornerTie::corner).toList());
    assertEquals(93.7, found.angle().inDegrees(), 0.1);
  }

  @Test
  void threeTiesAreAdjusted() {
    // 0.1 ft added to one of three: the point moves by less, the rest is left over
    TiedPoint.Found found = found(Grounds.drawn().tied("a 13.1 ft, b 15 ft, c 37 ft"));
    assertEquals(5, found.point().x().inFeet(), 0.12);
    assertEquals(-12, found.point().y().inFeet(), 0.12);
    double worst = found.adjustment().orElseThrow().worst().inFeet();
    assertTrue(worst > 0.01 && worst < 0.1, "left over " + worst);
  }

  @Test
  void tiesThatCannotMeetContradict() {
    // 4 + 3 < 14: 7 ft short
    TiedPoint.Impossible impossible =
        assertInstanceOf(
            TiedPoint.Impossible.class, Grounds.drawn().tied("a 4 ft, b 3 ft").solved());
    assertEquals("location.ties.contradict", impossible.reason().key());
    assertEquals(7, impossible.by().orElseThrow().inFeet(), 1e-9);
    assertEquals("corner A", impossible.reason().arguments().get("firstCorner"));
  }

  @Test
  void onePairOfThreeThatContradictsIsEnough() {
    TiedPoint.Impossible impossible =
        assertInstanceOf(
            TiedPoint.Impossible.class, Grounds.drawn().tied("a 13 ft, b 15 ft, c 90 ft").solved());
    assertEquals("corner C", impossible.reason().arguments().get("secondCorner"));
  }

  @ParameterizedTest
  @CsvSource({"7.09,true", "6.91,true", "6.89,false"})
  void tiesMayMissEachOtherByTheErrorOfBothTapes(double feet, boolean possible) {
    // corners 14 apart, 7 from one: they meet with 7; 0.1 ft less is the error of two tapes
    TiedPoint tied = Grounds.drawn().tied("a 7 ft, b " + feet + " ft").solved();
    assertEquals(possible, !(tied instanceof TiedPoint.Impossible));
  }

  @Test
  void tiesThatJustMeetOnTheLineLeaveThePlaceOpen() {
    TiedPoint.Touching touching =
        assertInstanceOf(TiedPoint.Touching.class, Grounds.drawn().tied("a 6 ft, b 8 ft").solved());
    assertEquals(6, touching.point().x().inFeet(), 1e-6);
    assertEquals(0, touching.point().y().inFeet(), 1e-6);
  }

  @Test
  void tiesThatMeetOnlyInTheHouseFitNowhere() {
    // from d (0, 30) and c (40, 0), 50 apart: 30 and 40 meet at (0, 0) and (28.8, 38.4): neither is
    // in the garden of this house, whose outline is moved away
    TiedPoint.Impossible impossible =
        assertInstanceOf(
            TiedPoint.Impossible.class,
            Grounds.with(
                    Grounds.HOUSE,
                    ", outline: [[0 ft, -50 ft], [0 ft, -20 ft], [70 ft, -20 ft], [70 ft, -50 ft]]")
                .tied("d 30 ft, c 40 ft")
                .solved());
    assertEquals("location.ties.nowhere", impossible.reason().key());
    assertTrue(impossible.by().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"0.10,true", "0.20,false"})
  void aPlaceMayMissItsAreaByAsMuchAsATieMayBeOff(double feet, boolean possible) {
    // the garden begins so far beyond the point (5, −12); 3 × 0.05 ft are allowed
    double edge = -12 - feet;
    TiedPoint tied =
        Grounds.with(
                "",
                ", outline: [[0 ft, -50 ft], [0 ft, "
                    + edge
                    + " ft], [70 ft, "
                    + edge
                    + " ft], [70 ft, -50 ft]]")
            .tied("a 13 ft, b 15 ft")
            .solved();
    assertEquals(possible, tied instanceof TiedPoint.Found);
  }

  @ParameterizedTest
  @CsvSource({"a 13 ft", "'a 13 ft, a 13 ft'"})
  void oneCornerIsNotEnough(String ties) {
    TiedPoint.Unknown unknown =
        assertInstanceOf(TiedPoint.Unknown.class, Grounds.drawn().tied(ties).solved());
    assertEquals(List.of(Phrase.of("location.missing.ties")), unknown.missing());
  }

  private static TiedPoint.Found found(Grounds grounds) {
    return assertInstanceOf(TiedPoint.Found.class, grounds.solved());
  }

  private static void assertAt(double x, double y, TiedPoint.Found found) {
    assertEquals(x, found.point().x().inFeet(), 0.002);
    assertEquals(y, found.point().y().inFeet(), 0.002);
  }
}
