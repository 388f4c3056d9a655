package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.compose.drawing.ConduitSection;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.FloorPlan;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.OneLine;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PanelMap;
import wallbook.compose.drawing.ScaleUnit;
import wallbook.compose.drawing.SitePlan;
import wallbook.compose.drawing.SweepPlot;
import wallbook.compose.drawing.SymbolKind;

class OtherScenesTest {
  static List<Drawing> samples() {
    return SampleDrawings.all();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleIsFreeOfCollisions(Drawing drawing) {
    Scene scene = DrawingSvg.scene(drawing);
    SceneChecks.assertNoCollisions(scene);
    SceneChecks.assertInsideSheet(scene);
    assertEquals(drawing.frame().widthMm(), scene.widthMm());
    assertTrue(scene.heightMm() <= drawing.frame().maxHeightMm());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void noTextIsBelowSixAndAHalfPoints(Drawing drawing) {
    DrawingSvg.scene(drawing).items().stream()
        .filter(Item.Words.class::isInstance)
        .map(Item.Words.class::cast)
        .forEach(words -> assertTrue(words.type().sizePt() >= 6.5, words.text()));
  }

  @Test
  void roomsTooSmallForTheirNameGetANumberAndARow() {
    List<NamedOutline> rooms = new ArrayList<>();
    rooms.add(new NamedOutline("Great hall", Outline.rectangle(0, 0, 18, 10)));
    for (int i = 0; i < 6; i++) {
      String name = "Walk-in linen closet " + (i + 1);
      rooms.add(new NamedOutline(name, Outline.rectangle(i * 0.8, 10.2, 0.7, 0.7)));
    }
    Scene scene =
        FloorPlanScene.draw(
            new FloorPlan(
                SampleDrawings.frame("Floor"),
                rooms,
                List.of(),
                Optional.empty(),
                ScaleUnit.METRE));
    SceneChecks.assertNoCollisions(scene);
    String all = String.join("|", texts(scene));
    rooms.forEach(room -> assertTrue(all.contains(room.name()), room.name()));
    assertEquals(2, texts(scene).stream().filter("6"::equals).count());
  }

  @Test
  void tieLinesRunFromTheCornerToThePlace() {
    SitePlan site = SampleDrawings.site();
    Scene scene = SitePlanScene.draw(site);
    List<Item.Path> ties =
        scene.items().stream()
            .filter(Item.Path.class::isInstance)
            .map(Item.Path.class::cast)
            .filter(path -> path.ink().dash() == Ink.Dash.CHAIN)
            .toList();
    assertEquals(6, ties.size());
    double mmPerM = 1000.0 / 192;
    var mark = site.marks().get(0);
    double metres = site.corners().get(0).point().distanceM(mark.point());
    Seg first = new Seg(ties.get(0).points().get(0), ties.get(0).points().get(1));
    assertTrue(texts(scene).stream().anyMatch(text -> text.startsWith("1 : 192")));
    assertEquals(metres * mmPerM, first.length(), 1e-9);
    assertEquals(scene.symbols().get(0).centre().x(), first.b().x(), 1e-9);
    assertEquals(scene.symbols().get(0).centre().y(), first.b().y(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 8, 12, 16, 24, 48})
  void everyPortIsDrawnOnceWithItsNumberAndLetter(int perRow) {
    PanelMap panel = SampleDrawings.panel(perRow);
    Scene scene = PanelMapScene.draw(panel);
    SceneChecks.assertNoCollisions(scene);
    List<String> numbers =
        scene.items().stream()
            .filter(Item.Words.class::isInstance)
            .map(Item.Words.class::cast)
            .filter(words -> words.type().equals(Item.Type.SMALL_BOLD))
            .map(Item.Words::text)
            .toList();
    for (int number = 1; number <= 2 * perRow; number++) {
      String wanted = String.valueOf(number);
      assertEquals(1, numbers.stream().filter(wanted::equals).count(), wanted);
    }
    long states =
        panel.rows().stream().flatMap(List::stream).map(PanelMap.Port::state).distinct().count();
    long letters =
        scene.items().stream()
            .filter(Item.Words.class::isInstance)
            .map(item -> ((Item.Words) item).text())
            .filter(text -> List.of("S", "D", "X", "F").contains(text))
            .count();
    assertEquals(2L * perRow + states, letters);
  }

  @Test
  void cablesWithoutRoomAreSaidSo() {
    ConduitSection.Cable thick = new ConduitSection.Cable("feeder", 15);
    ConduitSection full =
        new ConduitSection(
            SampleDrawings.frame("Conduit"),
            20,
            List.of(thick, thick),
            "112 %",
            "20 mm",
            "No room.");
    assertTrue(texts(ConduitSectionScene.draw(full)).contains("No room."));
  }

  // The position on a logarithmic axis: log(f/low) / log(high/low).
  @ParameterizedTest
  @CsvSource({"1, 0", "10, 0.5", "100, 1"})
  void decadesAreEquallyWide(double frequencyMHz, double share) {
    SweepPlot plot =
        new SweepPlot(
            SampleDrawings.frame("Sweep"),
            "f",
            "dB",
            List.of(
                new SweepPlot.Curve(
                    "limit",
                    SweepPlot.CurveKind.LIMIT,
                    List.of(
                        new SweepPlot.Sample(1, 60),
                        new SweepPlot.Sample(10, 45),
                        new SweepPlot.Sample(100, 30)))),
            Optional.empty());
    Item.Path limit =
        SweepPlotScene.draw(plot).items().stream()
            .filter(Item.Path.class::isInstance)
            .map(Item.Path.class::cast)
            .filter(path -> path.ink().dash() == Ink.Dash.DASHED)
            .findFirst()
            .orElseThrow();
    int index = frequencyMHz == 1 ? 0 : frequencyMHz == 10 ? 1 : 2;
    Box box = limit.bounds();
    assertEquals(box.left() + share * box.width(), limit.points().get(index).x(), 1e-9);
    assertEquals(box.top() + share * box.height(), limit.points().get(index).y(), 1e-9);
  }

  @Test
  void aHouseOfSixHundredRunsStaysLegible() {
    List<OneLine.Band> bands = new ArrayList<>();
    for (int floor = 0; floor < 4; floor++) {
      List<OneLine.Node> nodes = new ArrayList<>();
      for (int head = 0; head < 4; head++) {
        List<OneLine.Group> groups =
            List.of(
                new OneLine.Group("24", "data"),
                new OneLine.Group("8", "coax"),
                new OneLine.Group("6", "speaker"));
        nodes.add(
            new OneLine.Node("H" + floor + head, SymbolKind.PANEL, "H" + floor + head, groups));
      }
      bands.add(new OneLine.Band("Floor " + floor, nodes));
    }
    List<OneLine.Link> links =
        IntStream.range(0, 10)
            .mapToObj(
                i ->
                    new OneLine.Link(
                        "H00", "H" + (i % 4) + (1 + i % 3), OneLine.LinkKind.TRUNK, "T" + i))
            .toList();
    Scene scene = OneLineScene.draw(new OneLine(SampleDrawings.frame("House"), bands, links));
    SceneChecks.assertNoCollisions(scene);
    SceneChecks.assertInsideSheet(scene);
    assertEquals(16, scene.symbols().size());
    assertTrue(scene.heightMm() <= 230, "height " + scene.heightMm());
  }

  private static List<String> texts(Scene scene) {
    return scene.labels().stream().flatMap(label -> label.lines().stream()).toList();
  }
}
