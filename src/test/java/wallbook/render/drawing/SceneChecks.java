package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * Asks the JTS Topology Suite, an independent geometry library, whether a scene is free of
 * collisions.
 */
final class SceneChecks {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double HAIR_MM = 0.01;

  private SceneChecks() {}

  static void assertNoCollisions(Scene scene) {
    List<Scene.Label> labels = scene.labels();
    for (int i = 0; i < labels.size(); i++) {
      Geometry box = polygon(labels.get(i).box());
      for (int j = i + 1; j < labels.size(); j++) {
        assertFalse(
            box.intersects(polygon(labels.get(j).box())),
            labels.get(i) + " meets " + labels.get(j));
      }
      for (Box symbol : scene.symbols()) {
        assertFalse(box.intersects(polygon(symbol)), labels.get(i) + " meets " + symbol);
      }
      for (Seg leader : scene.leaders()) {
        assertFalse(box.intersects(line(leader)), labels.get(i) + " is crossed by " + leader);
      }
    }
    for (int i = 0; i < scene.symbols().size(); i++) {
      for (int j = i + 1; j < scene.symbols().size(); j++) {
        assertFalse(
            polygon(scene.symbols().get(i)).intersects(polygon(scene.symbols().get(j))),
            "two symbols meet");
      }
    }
    for (int i = 0; i < scene.leaders().size(); i++) {
      for (int j = i + 1; j < scene.leaders().size(); j++) {
        assertFalse(
            line(scene.leaders().get(i)).crosses(line(scene.leaders().get(j))),
            "two leaders cross");
      }
    }
  }

  static void assertInsideSheet(Scene scene) {
    Geometry sheet = JTS.toGeometry(new Envelope(0, scene.widthMm(), 0, scene.heightMm()));
    for (Scene.Label label : scene.labels()) {
      assertTrue(sheet.covers(polygon(label.box())), label + " leaves the sheet");
    }
    for (Item item : scene.items()) {
      assertTrue(sheet.covers(polygon(item.bounds())), item + " leaves the sheet");
    }
  }

  /** The inside of a box, so that boxes which only touch do not count as meeting. */
  private static Geometry polygon(Box box) {
    return JTS.toGeometry(
        new Envelope(
            box.left() + HAIR_MM,
            Math.max(box.left() + HAIR_MM, box.right() - HAIR_MM),
            box.top() + HAIR_MM,
            Math.max(box.top() + HAIR_MM, box.bottom() - HAIR_MM)));
  }

  private static LineString line(Seg seg) {
    return JTS.createLineString(
        new Coordinate[] {
          new Coordinate(seg.a().x(), seg.a().y()), new Coordinate(seg.b().x(), seg.b().y())
        });
  }
}
