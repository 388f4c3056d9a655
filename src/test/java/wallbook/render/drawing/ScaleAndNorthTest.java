package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.compose.drawing.NorthArrow;
import wallbook.compose.drawing.ScaleUnit;

class ScaleAndNorthTest {
  // Lengths from the definition of a scale; the foot is 304.8 mm exactly (international yard and
  // pound agreement, 1959).
  @ParameterizedTest
  @CsvSource({
    "METRE, 50, 2, 40.0",
    "METRE, 100, 5, 50.0",
    "FOOT, 48, 5, 31.75",
    "FOOT, 96, 10, 31.75",
    "FOOT, 24, 2, 25.4"
  })
  void barIsAsLongAsItSays(ScaleUnit unit, int ratio, double units, double lengthMm) {
    Scale scale = new Scale(ratio, unit);
    assertEquals(units, ScaleAndNorth.barUnits(scale));
    Canvas canvas = new Canvas();
    ScaleAndNorth.draw(canvas, scale, Optional.empty(), 0, 180);
    Box bar =
        canvas.scene(180, 20).items().stream()
            .filter(Item.Path.class::isInstance)
            .map(Item::bounds)
            .reduce(Box::union)
            .orElseThrow();
    assertEquals(lengthMm, bar.width(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, -1", "90, 1, 0", "180, 0, 1", "-90, -1, 0"})
  void arrowPointsToNorth(double degrees, double x, double y) {
    Canvas canvas = new Canvas();
    ScaleAndNorth.draw(
        canvas, new Scale(50, ScaleUnit.METRE), Optional.of(new NorthArrow(degrees, "N")), 0, 180);
    Item.Path dark =
        canvas.scene(180, 20).items().stream()
            .filter(Item.Path.class::isInstance)
            .map(Item.Path.class::cast)
            .filter(path -> path.points().size() == 3)
            .findFirst()
            .orElseThrow();
    // The triangle runs from the tip to a side and back to the tail on the axis.
    Pt axis = dark.points().get(0).minus(dark.points().get(2)).unit();
    assertEquals(x, axis.x(), 1e-9);
    assertEquals(y, axis.y(), 1e-9);
  }
}
