package wallbook.compose.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class OutlineTest {
  private static final List<PointM> ELL =
      List.of(
          new PointM(0, 0),
          new PointM(0, 4),
          new PointM(3, 4),
          new PointM(3, 2),
          new PointM(5, 2),
          new PointM(5, 0));

  @Test
  void areaAgreesWithJts() {
    Coordinate[] ring =
        java.util.stream.Stream.concat(ELL.stream(), ELL.stream().limit(1))
            .map(corner -> new Coordinate(corner.xM(), corner.yM()))
            .toArray(Coordinate[]::new);
    double jts = new GeometryFactory().createPolygon(ring).getArea();
    assertEquals(jts, new Outline(ELL).areaM2(), 1e-12);
  }

  @Test
  void offsetRunsFromTheLeftHandOfSomebodyFacingTheWall() {
    Outline room = Outline.rectangle(0, 0, 4, 3);
    // Wall B is the upper one: facing it, that is looking up the page, left is toward smaller x.
    assertEquals(new PointM(1, 3), room.onWall(1, 1));
    // Wall D is the lower one: looking down the page, left is toward greater x.
    assertEquals(new PointM(3, 0), room.onWall(3, 1));
  }

  @Test
  void inwardPointsIntoTheRoom() {
    assertEquals(new PointM(1, 0), Outline.rectangle(0, 0, 4, 3).inward(0));
  }

  @Test
  void counterClockwiseCornersAreRefused() {
    List<PointM> turned = List.of(new PointM(0, 0), new PointM(1, 0), new PointM(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Outline(turned));
    assertEquals(
        List.of(new PointM(0, 0), new PointM(0, 1), new PointM(1, 0)),
        Outline.ofCornersInAnyDirection(turned).corners());
  }

  @Test
  void lettersGoOnAfterZ() {
    assertEquals("A", Outline.wallLetter(0));
    assertEquals("Z", Outline.wallLetter(25));
    assertEquals("AB", Outline.wallLetter(27));
  }
}
