package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import wallbook.compose.drawing.ElevationMark;
import wallbook.compose.drawing.ScaleUnit;
import wallbook.compose.drawing.SymbolKind;
import wallbook.compose.drawing.WallElevation;

class ElevationSceneTest {
  @Test
  void plateStandsAtItsOffsetAndHeight() {
    Scene scene = ElevationScene.draw(wall(4, 2.5, List.of(plate(1.2, 0.4))));
    Box face = face(scene);
    double mmPerM = face.width() / 4;
    Pt plate = scene.symbols().get(0).centre();
    assertEquals(1.2 * mmPerM, plate.x() - face.left(), 1e-9);
    assertEquals(0.4 * mmPerM, face.bottom() - plate.y(), 1e-9);
  }

  @Test
  void wallKeepsItsProportions() {
    Box face = face(ElevationScene.draw(wall(5, 3, List.of())));
    assertEquals(5.0 / 3.0, face.width() / face.height(), 1e-9);
  }

  @Test
  void offsetAndHeightOfEveryPlateAreWritten() {
    List<String> texts = texts(ElevationScene.draw(SampleDrawings.televisionWall()));
    for (ElevationMark mark : SampleDrawings.televisionWall().marks()) {
      assertTrue(texts.contains(mark.offsetText()), mark.offsetText());
      assertTrue(texts.contains(mark.heightText()), mark.heightText());
    }
  }

  @Property(tries = 80)
  void platesAndTextNeverCollide(
      @ForAll @DoubleRange(min = 0.6, max = 14) double width,
      @ForAll @Size(min = 1, max = 25) List<@DoubleRange(min = 0, max = 1) Double> shares) {
    List<ElevationMark> marks = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      marks.add(plate(shares.get(i) * width, 0.3 + 0.4 * (i % 5)));
    }
    Scene scene = ElevationScene.draw(wall(width, 2.6, marks));
    SceneChecks.assertNoCollisions(scene);
    SceneChecks.assertInsideSheet(scene);
    assertEquals(marks.size(), scene.symbols().size());
    assertTrue(scene.heightMm() <= 230);
  }

  private static ElevationMark plate(double offsetM, double heightM) {
    String offset = "%.2f m".formatted(offsetM);
    String height = "%.2f m".formatted(heightM);
    return SampleDrawings.elevated(
        SymbolKind.PLATE, offsetM, heightM, offset, height, "plate at " + offset);
  }

  private static WallElevation wall(double width, double height, List<ElevationMark> marks) {
    return new WallElevation(
        SampleDrawings.frame("Wall"),
        WallElevation.levelCeiling(width, height),
        "width",
        "height",
        List.of(),
        marks,
        ScaleUnit.METRE);
  }

  /** The wall is the first shape drawn. */
  private static Box face(Scene scene) {
    return scene.items().get(0).bounds();
  }

  private static List<String> texts(Scene scene) {
    return scene.labels().stream().flatMap(label -> label.lines().stream()).toList();
  }
}
