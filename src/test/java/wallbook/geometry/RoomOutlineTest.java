package wallbook.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import wallbook.quantity.Length;
import wallbook.record.Point;

class RoomOutlineTest {
  /** An L of 6 m by 5 m whose upper right quarter is cut out, clockwise from the lower left. */
  private static final RoomOutline L_SHAPE =
      outline(new double[][] {{0, 0}, {0, 5}, {3, 5}, {3, 2}, {6, 2}, {6, 0}});

  @Test
  void wallAOfAClockwiseRoomFacesLeftWhenItRunsUpThePlan() {
    // Inside a clockwise outline the wall that runs up the page is on the left: one faces 270°.
    assertEquals(270, L_SHAPE.wall("A").orElseThrow().facing().inDegrees(), 1e-9);
    assertEquals(0, L_SHAPE.wall("B").orElseThrow().facing().inDegrees(), 1e-9);
    assertEquals(180, L_SHAPE.wall("F").orElseThrow().facing().inDegrees(), 1e-9);
  }

  @Test
  void theOffsetIsCountedFromTheLeftHandCorner() {
    // Facing the top wall B from inside, the left-hand corner is (0, 5).
    Point at = L_SHAPE.wall("B").orElseThrow().at(Length.metres(1));
    assertEquals(1, at.x().inMetres(), 1e-9);
    assertEquals(5, at.y().inMetres(), 1e-9);
  }

  @Test
  void orientationIsToldFromTheOrderOfTheCorners() {
    assertTrue(L_SHAPE.isClockwise());
    assertFalse(outline(new double[][] {{0, 0}, {4, 0}, {4, 3}}).isClockwise());
  }

  @Test
  void areaAndInsideAgreeWithAGeometryLibrary() {
    Polygon library =
        new GeometryFactory()
            .createPolygon(
                new Coordinate[] {
                  new Coordinate(0, 0),
                  new Coordinate(0, 5),
                  new Coordinate(3, 5),
                  new Coordinate(3, 2),
                  new Coordinate(6, 2),
                  new Coordinate(6, 0),
                  new Coordinate(0, 0)
                });
    assertEquals(library.getArea(), L_SHAPE.area().inSquareMetres(), 1e-9);
    Random random = new Random(7);
    for (int i = 0; i < 500; i++) {
      double x = random.nextDouble() * 8 - 1;
      double y = random.nextDouble() * 7 - 1;
      boolean expected = library.contains(library.getFactory().createPoint(new Coordinate(x, y)));
      assertEquals(expected, L_SHAPE.contains(point(x, y)), x + "," + y);
    }
  }

  @Test
  void lettersGoOnBehindZ() {
    assertEquals(
        List.of("Y", "Z", "AA", "AB"),
        IntStream.range(24, 28).mapToObj(RoomOutline::letter).toList());
  }

  private static RoomOutline outline(double[][] corners) {
    return new RoomOutline(Arrays.stream(corners).map(c -> point(c[0], c[1])).toList());
  }

  private static Point point(double x, double y) {
    return new Point(Length.metres(x), Length.metres(y));
  }
}
