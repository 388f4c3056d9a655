package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.NorthArrow;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.ScaleUnit;
import wallbook.compose.drawing.SymbolKind;

class RoomPlanSceneTest {
  @Property(tries = 120)
  void labelsNeverCollideNorLeaveTheSheet(@ForAll("rooms") RoomPlan plan) {
    Scene scene = RoomPlanScene.draw(plan);
    SceneChecks.assertNoCollisions(scene);
    SceneChecks.assertInsideSheet(scene);
    assertTrue(scene.heightMm() <= plan.frame().maxHeightMm());
    assertEquals(plan.marks().size(), scene.symbols().size());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 5, 12, 25, 40, 60})
  void oneWallMayCarryManyMarks(int count) {
    Scene scene = RoomPlanScene.draw(SampleDrawings.crowded(count, RoomPlan.LabelStyle.AS_FITS));
    SceneChecks.assertNoCollisions(scene);
    SceneChecks.assertInsideSheet(scene);
  }

  @Test
  void marksAtOnePointGetSymbolsOfTheirOwn() {
    List<Mark> marks =
        Stream.generate(() -> SampleDrawings.onWall(SymbolKind.PLATE, 1, 1.0, "same place"))
            .limit(6)
            .toList();
    SceneChecks.assertNoCollisions(RoomPlanScene.draw(plan(room(4, 3), marks)));
  }

  @Test
  void wallsAreAsLongAsTheScaleSays() {
    Scene scene = RoomPlanScene.draw(plan(room(4, 3), List.of()));
    Item.Path walls = walls(scene);
    int ratio = ratio(scene);
    assertEquals(4000.0 / ratio, walls.bounds().width(), 1e-9);
    assertEquals(3000.0 / ratio, walls.bounds().height(), 1e-9);
  }

  @Test
  void everyCornerLiesWhereThePlanHasIt() {
    RoomPlan family = SampleDrawings.familyRoom();
    Scene scene = RoomPlanScene.draw(family);
    List<Pt> drawn = walls(scene).points();
    double mmPerM = 1000.0 / ratio(scene);
    for (int i = 0; i < drawn.size(); i++) {
      var corner = family.outline().corners().get(i);
      assertEquals(corner.xM() * mmPerM, drawn.get(i).x() - drawn.get(0).x(), 1e-9);
      assertEquals(-corner.yM() * mmPerM, drawn.get(i).y() - drawn.get(0).y(), 1e-9);
    }
  }

  @Test
  void numbersAreExplainedBeneath() {
    Scene scene = RoomPlanScene.draw(SampleDrawings.crowded(8, RoomPlan.LabelStyle.NUMBERED));
    List<String> texts = scene.labels().stream().flatMap(l -> l.lines().stream()).toList();
    assertEquals(
        2, texts.stream().filter("8"::equals).count(), "one at the mark, one in the table");
    assertTrue(texts.contains("OF-08 \u00b7 office run 8"));
  }

  @Test
  void noTextIsSmallerThanSixAndAHalfPoints() {
    Scene scene = RoomPlanScene.draw(SampleDrawings.familyRoom());
    for (Item item : scene.items()) {
      if (item instanceof Item.Words words) {
        assertTrue(words.type().sizePt() >= 6.5);
      }
    }
  }

  @Test
  void sameRoomGivesSameScene() {
    assertEquals(
        RoomPlanScene.draw(SampleDrawings.familyRoom()),
        RoomPlanScene.draw(SampleDrawings.familyRoom()));
  }

  @Provide
  Arbitrary<RoomPlan> rooms() {
    Arbitrary<Double> side = Arbitraries.doubles().between(0.8, 12);
    Arbitrary<Double> share = Arbitraries.doubles().between(0, 1);
    Arbitrary<Mark> anywhere =
        Combinators.combine(
                Arbitraries.of(SymbolKind.class),
                share,
                share,
                Arbitraries.integers().between(0, 8),
                words())
            .as(
                (kind, u, v, where, label) ->
                    where == 8
                        ? SampleDrawings.at(kind, u, v, label)
                        : SampleDrawings.onWall(kind, where < 4 ? where : 1, u, label));
    return Combinators.combine(
            side, side, anywhere.list().ofMinSize(1).ofMaxSize(25), Arbitraries.of(ScaleUnit.class))
        .as(
            (width, depth, marks, unit) ->
                new RoomPlan(
                    SampleDrawings.frame("Random room"),
                    Outline.rectangle(0, 0, width, depth),
                    List.of("12 ft 11 in", "9 ft 3 in", "12 ft 11 in", "9 ft 3 in"),
                    stretched(marks, width, depth),
                    List.of(),
                    Optional.of(new NorthArrow(width * 30, "N")),
                    unit,
                    RoomPlan.LabelStyle.AS_FITS));
  }

  private static Arbitrary<String[]> words() {
    return Arbitraries.strings()
        .withCharRange('A', 'z')
        .withChars(' ', '-', '\u00e9')
        .ofMinLength(1)
        .ofMaxLength(30)
        .array(String[].class)
        .ofMinSize(1)
        .ofMaxSize(3);
  }

  /** Turns shares of a side into metres. */
  private static List<Mark> stretched(List<Mark> marks, double width, double depth) {
    List<Mark> placed = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark.spot() instanceof wallbook.compose.drawing.Spot.OnWall on) {
        double length = on.wall() % 2 == 0 ? depth : width;
        placed.add(
            SampleDrawings.onWall(
                mark.symbol(),
                on.wall(),
                on.offsetM() * length,
                mark.label().toArray(String[]::new)));
      } else if (mark.spot() instanceof wallbook.compose.drawing.Spot.At at) {
        placed.add(
            SampleDrawings.at(
                mark.symbol(),
                at.point().xM() * width,
                at.point().yM() * depth,
                mark.label().toArray(String[]::new)));
      }
    }
    return placed;
  }

  private static Outline room(double widthM, double depthM) {
    return Outline.rectangle(0, 0, widthM, depthM);
  }

  private static RoomPlan plan(Outline outline, List<Mark> marks) {
    return new RoomPlan(
        SampleDrawings.frame("Room"),
        outline,
        List.of("a", "b", "c", "d"),
        marks,
        List.of(),
        Optional.empty(),
        ScaleUnit.METRE,
        RoomPlan.LabelStyle.AS_FITS);
  }

  private static Item.Path walls(Scene scene) {
    return scene.items().stream()
        .filter(Item.Path.class::isInstance)
        .map(Item.Path.class::cast)
        .filter(path -> path.closed() && path.ink().lineMm() == Ink.WALL.lineMm())
        .findFirst()
        .orElseThrow();
  }

  private static int ratio(Scene scene) {
    return scene.labels().stream()
        .flatMap(label -> label.lines().stream())
        .filter(line -> line.startsWith("1 : "))
        .map(line -> Integer.parseInt(line.substring(4).split(" ")[0]))
        .findFirst()
        .orElseThrow();
  }
}
