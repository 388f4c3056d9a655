package wallbook.assess.location;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.math.Vector3D;
import wallbook.Jobs;
import wallbook.geometry.BuildingPoint;
import wallbook.geometry.RoomOutline;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.wording.Phrase;

class PositionsTest {
  /** An L of six walls, in feet, clockwise seen from above. */
  private static final double[][] ELL = {{0, 0}, {0, 20}, {10, 20}, {10, 8}, {24, 8}, {24, 0}};

  @ParameterizedTest
  @CsvSource({ // the house is 40 by 30 ft; A goes up, B right, C down, D left; offset from the left
    "A,6 ft,0,6",
    "B,6 ft,6,30",
    "C,6 ft,40,24",
    "D,6 ft,34,0"
  })
  void anOffsetCountsFromTheLeftHandCornerFacingTheWall(
      String wall, String offset, double x, double y) {
    Position position =
        Grounds.drawn()
            .place(
                "p",
                "house",
                "kind: box, wall: " + wall + ", offset: " + offset + ", height: 18 in")
            .position("p");
    BuildingPoint point = position.point().orElseThrow();
    assertEquals(x, point.plan().x().inFeet(), 1e-9);
    assertEquals(y, point.plan().y().inFeet(), 1e-9);
    assertEquals(1.5, point.height().inFeet(), 1e-9);
  }

  @Test
  void aHeightCountsFromTheFloorOfItsStorey() {
    // 10 ft of the upper floor and 18 in
    Position position =
        Grounds.drawn()
            .place("p", "loft", "kind: box, wall: A, offset: 6 ft, height: 18 in")
            .position("p");
    assertEquals(11.5, position.height().orElseThrow().inFeet(), 1e-9);
  }

  @Test
  void aCeilingPointIsAtTheCeilingAndAFloorBoxInTheFloor() {
    Grounds grounds =
        Grounds.drawn()
            .place("ceiling", "house", "kind: ceiling_point, at: [10 ft, 7 ft]")
            .place("lower", "house", "kind: ceiling_point, at: [10 ft, 7 ft], height: 8 ft")
            .place("floor", "house", "kind: floor_box, at: [10 ft, 7 ft]")
            .place("unknown", "loft", "kind: ceiling_point, at: [10 ft, 7 ft]");
    assertEquals(9, grounds.position("ceiling").height().orElseThrow().inFeet(), 1e-9);
    assertEquals(8, grounds.position("lower").height().orElseThrow().inFeet(), 1e-9);
    assertEquals(0, grounds.position("floor").height().orElseThrow().inFeet(), 1e-9);
    assertEquals(
        List.of(Phrase.of("location.missing.height")), grounds.position("unknown").missing());
    assertEquals(10, grounds.position("ceiling").plan().orElseThrow().x().inFeet(), 1e-9);
  }

  @Test
  void anOutdoorPlaceIsWhereItsTiesMeet() {
    Position position = Grounds.drawn().tied("a 13 ft, b 15 ft").position("so");
    assertEquals(5, position.plan().orElseThrow().x().inFeet(), 1e-6);
    assertEquals(-12, position.plan().orElseThrow().y().inFeet(), 1e-6);
    assertEquals(0.5, position.height().orElseThrow().inFeet(), 1e-9); // 6 in above grade
    assertEquals(List.of(), position.missing());
  }

  @Test
  void contradictingTiesGiveNoPlace() {
    Position position = Grounds.drawn().tied("a 4 ft, b 3 ft").position("so");
    assertEquals(Optional.empty(), position.plan());
    assertEquals(List.of(Phrase.of("location.missing.sound-ties")), position.missing());
  }

  @Test
  void aPointOnThePlanServesWhereTiesDoNot() {
    Position position =
        Grounds.drawn()
            .place(
                "so",
                "garden",
                "kind: stub_out, at: [3 ft, -4 ft], height: 6 in,"
                    + " ties: [{from: a, distance: 5 ft}]")
            .position("so");
    assertEquals(-4, position.plan().orElseThrow().y().inFeet(), 1e-9);
    assertEquals(List.of(), position.missing());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "house|kind: box, height: 1 ft|location.missing.place",
        "house|kind: box, wall: A, height: 1 ft|location.missing.place",
        "house|kind: box, offset: 1 ft, height: 1 ft|location.missing.place",
        "garden|kind: box, wall: A, offset: 1 ft, height: 1 ft|location.missing.outline",
        "house|kind: box, wall: Q, offset: 1 ft, height: 1 ft|location.missing.wall",
        "house|kind: box, wall: A, offset: 1 ft|location.missing.height",
        "garden|kind: stub_out, height: 1 ft, ties: [{from: a, distance: 5 ft}]|location.missing.ties"
      })
  void whatIsMissingIsNamed(String space, String fields, String missing) {
    Position position = Grounds.with(Grounds.HOUSE, "").place("p", space, fields).position("p");
    assertEquals(List.of(missing), position.missing().stream().map(Phrase::key).toList());
    assertTrue(position.point().isEmpty());
  }

  @Test
  void anOutlineThatRunsTheWrongWayRoundIsNotTrusted() {
    Position position =
        Grounds.with(", outline: [[0 ft, 0 ft], [40 ft, 0 ft], [40 ft, 30 ft], [0 ft, 30 ft]]", "")
            .place("p", "house", "kind: box, wall: A, offset: 1 ft, height: 1 ft")
            .position("p");
    assertEquals("location.missing.outline", position.missing().get(0).key());
  }

  @Test
  void aHeadIsWhereItsWallSays() {
    Job job = Grounds.drawn().job();
    Position rack = new Positions(job, Jobs.TABLES).of(job.head("rack"));
    assertEquals(0, rack.plan().orElseThrow().x().inFeet(), 1e-9);
    assertEquals(10, rack.plan().orElseThrow().y().inFeet(), 1e-9);
    assertEquals(4, rack.height().orElseThrow().inFeet(), 1e-9);
  }

  @Property
  void pointsOnWallsLieOnThemByAnIndependentLibrary(
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    List<wallbook.geometry.Wall> walls = outline().walls();
    for (int i = 0; i < walls.size(); i++) {
      double[] from = ELL[i];
      double[] to = ELL[(i + 1) % ELL.length];
      LineSegment segment = new LineSegment(from[0], from[1], to[0], to[1]);
      assertEquals(segment.getLength(), walls.get(i).length().inFeet(), 1e-9);
      Coordinate expected = segment.pointAlong(share);
      wallbook.record.Point found = walls.get(i).at(walls.get(i).length().times(share));
      assertEquals(expected.x, found.x().inFeet(), 1e-9);
      assertEquals(expected.y, found.y().inFeet(), 1e-9);
    }
  }

  @Property
  void pointsAreInsideAndAsFarFromWallsAsAnIndependentLibrarySays(
      @ForAll @DoubleRange(min = -5, max = 30) double x,
      @ForAll @DoubleRange(min = -5, max = 30) double y) {
    Polygon polygon = polygon();
    org.locationtech.jts.geom.Point point = new GeometryFactory().createPoint(new Coordinate(x, y));
    double distance = polygon.getBoundary().distance(point);
    assertEquals(distance, outline().distanceToWalls(TwoTiesTest.feet(x, y)).inFeet(), 1e-9);
    if (distance > 1e-9) {
      assertEquals(polygon.contains(point), outline().contains(TwoTiesTest.feet(x, y)));
    }
  }

  @Test
  void theAreaIsThatOfAnIndependentLibrary() {
    assertEquals(polygon().getArea(), outline().area().inSquareFeet(), 1e-9); // 312 sq ft
    assertEquals(10 * 20 + 14 * 8, outline().area().inSquareFeet(), 1e-9);
  }

  @Property
  void distancesInSpaceAreThoseOfAnIndependentLibrary(
      @ForAll @DoubleRange(min = -50, max = 50) double x,
      @ForAll @DoubleRange(min = -50, max = 50) double y,
      @ForAll @DoubleRange(min = -20, max = 20) double z) {
    BuildingPoint a = new BuildingPoint(TwoTiesTest.feet(1, 2), Length.feet(3));
    BuildingPoint b = new BuildingPoint(TwoTiesTest.feet(x, y), Length.feet(z));
    double expected = new Vector3D(x - 1, y - 2, z - 3).length();
    assertEquals(expected, a.distanceTo(b).inFeet(), 1e-9);
    assertEquals(expected, b.distanceTo(a).inFeet(), 1e-9);
  }

  private static RoomOutline outline() {
    return new RoomOutline(
        java.util.Arrays.stream(ELL).map(c -> TwoTiesTest.feet(c[0], c[1])).toList());
  }

  private static Polygon polygon() {
    Coordinate[] ring = new Coordinate[ELL.length + 1];
    for (int i = 0; i <= ELL.length; i++) {
      ring[i] = new Coordinate(ELL[i % ELL.length][0], ELL[i % ELL.length][1]);
    }
    return new GeometryFactory().createPolygon(ring);
  }
}
