package wallbook.assess.location;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import wallbook.quantity.Length;
import wallbook.record.Point;

class TwoTiesTest {
  private static final Length SLACK = Length.feet(0.1);

  @ParameterizedTest
  @CsvSource({ // x = (r² − s² + b²)/(2b), y = ±√(r² − x²), open surveying textbook; 8 published
    // triangles
    "10,6,8,3.6,4.8,90",
    "14,13,15,5,12,59.49",
    "20,15,17,8.4,12.427,77.08",
    "30,18,25,9.983,14.978,86.88"
  })
  void twoTiesMeetInTwoMirrorPoints(
      double base, double r, double s, double x, double y, double degrees) {
    TieFix.Crossing crossing = crossing(base, r, s);
    assertEquals(x, crossing.left().x().inFeet(), 0.0006);
    assertEquals(y, crossing.left().y().inFeet(), 0.0006);
    assertEquals(x, crossing.right().x().inFeet(), 0.0006);
    assertEquals(-y, crossing.right().y().inFeet(), 0.0006);
    assertEquals(degrees, crossing.atPoint().inDegrees(), 0.01);
  }

  @ParameterizedTest
  @CsvSource({ // r + s < b: 12 − 7 = 5 ft short; |r − s| > b: 13 − 12 = 1 ft too much
    "12,4,3,5",
    "12,20,7,1",
    "12,7,20,1"
  })
  void tiesThatCannotMeetMissEachOther(double base, double r, double s, double feet) {
    TieFix.Contradiction contradiction =
        assertInstanceOf(TieFix.Contradiction.class, solve(base, r, s, 0.1));
    assertEquals(feet, contradiction.by().inFeet(), 1e-9);
  }

  @Test
  void tiesThatJustMeetLieOnTheLine() {
    // b 12, r 5, s 7: (5, 0)
    TieFix.OnLine onLine = assertInstanceOf(TieFix.OnLine.class, solve(12, 5, 7, 0));
    assertEquals(5, onLine.point().x().inFeet(), 1e-9);
    assertEquals(0, onLine.point().y().inFeet(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0.09,true", "0.11,false"})
  void aGapWithinTheErrorOfTheTapeIsNoContradiction(double gap, boolean touches) {
    TieFix fix =
        TwoTies.solve(feet(0, 0), Length.feet(5 - gap), feet(12, 0), Length.feet(7), SLACK);
    assertEquals(touches, fix instanceof TieFix.OnLine);
    assertEquals(!touches, fix instanceof TieFix.Contradiction);
  }

  @Test
  void aTieOfNothingLiesOnTheCorner() {
    TieFix.OnLine onLine = assertInstanceOf(TieFix.OnLine.class, solve(12, 0, 12, 0.1));
    assertEquals(0, onLine.point().x().inFeet(), 1e-9);
  }

  @Test
  void leftIsSeenFromTheFirstCornerToTheSecond() {
    // from (0, 10) down to (0, 0): left is to the right of the page
    TieFix.Crossing down =
        (TieFix.Crossing)
            TwoTies.solve(feet(0, 10), Length.feet(6), feet(0, 0), Length.feet(8), SLACK);
    assertEquals(4.8, down.left().x().inFeet(), 1e-9);
    assertEquals(6.4, down.left().y().inFeet(), 1e-9);
    assertEquals(-4.8, down.right().x().inFeet(), 1e-9);
  }

  @Test
  void twoTiesFromOnePointAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> solve(0, 5, 5, 0.1));
  }

  @Property
  void aPointAndItsTiesAgreeBothWays(
      @ForAll @DoubleRange(min = -60, max = 60) double x,
      @ForAll @DoubleRange(min = 0.5, max = 60) double y,
      @ForAll @DoubleRange(min = 5, max = 60) double bx,
      @ForAll @DoubleRange(min = -20, max = 20) double by) {
    // distances from an independent geometry library
    Coordinate at = new Coordinate(x, y);
    Coordinate b = new Coordinate(bx, by);
    Length toA = Length.feet(at.distance(new Coordinate(0, 0)));
    Length toB = Length.feet(at.distance(b));
    TieFix fix = TwoTies.solve(feet(0, 0), toA, feet(bx, by), toB, SLACK);
    double cross = bx * y - by * x;
    if (Math.abs(cross) / Math.hypot(bx, by) > 0.1) {
      TieFix.Crossing crossing = assertInstanceOf(TieFix.Crossing.class, fix);
      Point found = cross > 0 ? crossing.left() : crossing.right();
      assertEquals(x, found.x().inFeet(), 1e-4);
      assertEquals(y, found.y().inFeet(), 1e-4);
      Coordinate other = coordinate(cross > 0 ? crossing.right() : crossing.left());
      assertEquals(toA.inFeet(), other.distance(new Coordinate(0, 0)), 1e-6);
      assertEquals(toB.inFeet(), other.distance(b), 1e-6);
    }
  }

  @Property
  void exchangingTheCornersExchangesTheSides(
      @ForAll @DoubleRange(min = 6, max = 15) double r,
      @ForAll @DoubleRange(min = 6, max = 15) double s) {
    TieFix.Crossing there = crossing(10, r, s);
    TieFix.Crossing back =
        (TieFix.Crossing)
            TwoTies.solve(feet(10, 0), Length.feet(s), feet(0, 0), Length.feet(r), SLACK);
    assertEquals(there.left().x().inFeet(), back.right().x().inFeet(), 1e-9);
    assertEquals(there.left().y().inFeet(), back.right().y().inFeet(), 1e-9);
    assertTrue(there.left().y().inFeet() > 0);
  }

  private static TieFix.Crossing crossing(double base, double r, double s) {
    return assertInstanceOf(TieFix.Crossing.class, solve(base, r, s, 0.1));
  }

  private static TieFix solve(double base, double r, double s, double slack) {
    return TwoTies.solve(
        feet(0, 0), Length.feet(r), feet(base, 0), Length.feet(s), Length.feet(slack));
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.x().inFeet(), point.y().inFeet());
  }

  static Point feet(double x, double y) {
    return new Point(Length.feet(x), Length.feet(y));
  }
}
