package wallbook.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import wallbook.quantity.Length;
import wallbook.record.Point;

/** Outlines held against JTS, an independent geometry library. */
class OutlineAgainstLibraryTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static RoomOutline outline(double[]... corners) {
    return new RoomOutline(Arrays.stream(corners).map(OutlineAgainstLibraryTest::point).toList());
  }

  private static Point point(double[] xy) {
    return new Point(Length.metres(xy[0]), Length.metres(xy[1]));
  }

  private static Polygon polygon(List<Point> corners) {
    List<Coordinate> ring = new ArrayList<>();
    corners.forEach(p -> ring.add(new Coordinate(p.x().inMetres(), p.y().inMetres())));
    ring.add(ring.get(0));
    return JTS.createPolygon(ring.toArray(new Coordinate[0]));
  }

  /** Stars of five to nine corners around a centre: simple outlines, mostly not convex. */
  @Provide
  Arbitrary<List<Point>> stars() {
    Arbitrary<List<Double>> radii =
        Arbitraries.doubles().between(1, 6).list().ofMinSize(5).ofMaxSize(9);
    Arbitrary<Double> centres = Arbitraries.doubles().between(-3, 3);
    return Combinators.combine(radii, centres, centres)
        .as(
            (r, x, y) -> {
              List<Point> corners = new ArrayList<>();
              for (int i = 0; i < r.size(); i++) {
                double angle = -2 * Math.PI * i / r.size();
                corners.add(
                    point(
                        new double[] {
                          x + r.get(i) * Math.cos(angle), y + r.get(i) * Math.sin(angle)
                        }));
              }
              return corners;
            });
  }

  @Provide
  Arbitrary<List<Point>> anyCorners() {
    Arbitrary<Double> metres = Arbitraries.integers().between(0, 6).map(Integer::doubleValue);
    return Combinators.combine(metres, metres)
        .as((x, y) -> point(new double[] {x, y}))
        .list()
        .ofMinSize(3)
        .ofMaxSize(7)
        .uniqueElements();
  }

  @Property
  void sharedAreaIsThatOfTheIntersection(
      @ForAll("stars") List<Point> a, @ForAll("stars") List<Point> b) {
    double expected = polygon(a).intersection(polygon(b)).getArea();
    assertEquals(
        expected,
        new RoomOutline(a).areaSharedWith(new RoomOutline(b)).inSquareMetres(),
        1e-6 * (1 + expected));
  }

  @Property
  void anOutlineSharesAllOfItselfWithItself(@ForAll("stars") List<Point> a) {
    double area = polygon(a).getArea();
    assertEquals(
        area, new RoomOutline(a).areaSharedWith(new RoomOutline(a)).inSquareMetres(), 1e-9 * area);
  }

  @Property
  void whatCrossesItselfIsNoSimpleRing(@ForAll("anyCorners") List<Point> corners) {
    boolean simple = polygon(corners).getExteriorRing().isSimple();
    RoomOutline outline = new RoomOutline(corners);
    assertEquals(!simple, outline.crossesItself());
  }

  @Property
  void aPointWithinTheToleranceOfTheOutlineIsInside(
      @ForAll("stars") List<Point> corners, @ForAll("stars") List<Point> others) {
    Point point = others.get(0);
    double away =
        polygon(corners)
            .distance(JTS.createPoint(new Coordinate(point.x().inMetres(), point.y().inMetres())));
    RoomOutline outline = new RoomOutline(corners);
    assertTrue(outline.contains(point, Length.metres(away + 1e-6)));
    if (away > 1e-3) {
      assertFalse(outline.contains(point, Length.metres(away - 1e-6)));
    }
  }

  @Test
  void neighboursThatTouchShareNoArea() {
    RoomOutline left = outline(new double[][] {{0, 0}, {0, 4}, {3, 4}, {3, 0}});
    RoomOutline right = outline(new double[][] {{3, 0}, {3, 4}, {5, 4}, {5, 0}});
    assertEquals(0, left.areaSharedWith(right).inSquareMetres(), 1e-12);
  }

  @Test
  void aWallThatTurnsBackOnItselfIsACrossing() {
    assertTrue(outline(new double[][] {{0, 0}, {0, 4}, {0, 2}, {3, 0}}).crossesItself());
  }

  @Test
  void aCornerGivenTwiceInARowIsFound() {
    assertEquals(
        1, outline(new double[][] {{0, 0}, {0, 4}, {0, 4}, {3, 0}}).repeatedCorner().getAsInt());
    assertEquals(
        3, outline(new double[][] {{0, 0}, {0, 4}, {3, 4}, {0, 0}}).repeatedCorner().getAsInt());
    assertTrue(outline(new double[][] {{0, 0}, {0, 4}, {3, 0}}).repeatedCorner().isEmpty());
  }
}
