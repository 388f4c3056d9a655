package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.compose.drawing.FloorPlan;
import wallbook.compose.drawing.NamedOutline;

/**
 * Lays out a floor: names inside their rooms, or a number and a table for rooms that are too small
 * for their name.
 */
final class FloorPlanScene {
  private static final double MARGIN_MM = 4;
  private static final double DOT_MM = 0.9;

  private final FloorPlan plan;
  private final List<List<String>> keyed = new ArrayList<>();
  private final List<TinyRoom> tiny = new ArrayList<>();

  private FloorPlanScene(FloorPlan plan) {
    this.plan = plan;
  }

  /** A room without room even for its number, which stands outside on a leader. */
  private record TinyRoom(Box dot, TextBlock number) {}

  static Scene draw(FloorPlan plan) {
    // The table takes height from the plan, and a smaller plan may need more numbers: start from
    // what the first try needed.
    List<List<String>> keyed = List.of();
    for (int round = 0; round < 4; round++) {
      FloorPlanScene layout = new FloorPlanScene(plan);
      Optional<Scene> scene = layout.tryWithTableFor(keyed);
      if (scene.isPresent() && layout.keyed.size() == keyed.size()) {
        return scene.get();
      }
      keyed = List.copyOf(layout.keyed);
    }
    throw new IllegalStateException("no room on the sheet for this floor");
  }

  private Optional<Scene> tryWithTableFor(List<List<String>> rows) {
    double width = plan.frame().widthMm();
    Optional<KeyTable> table =
        rows.isEmpty()
            ? Optional.empty()
            : Optional.of(KeyTable.of(rows, width, plan.frame().maxHeightMm() / 3));
    PlanView.ExtentM extent =
        PlanView.ExtentM.of(
            plan.rooms().stream().flatMap(room -> room.outline().corners().stream()).toList());
    PlanSheet sheet = new PlanSheet(plan.frame(), plan.unit(), extent, plan.north());
    return sheet.draw(MARGIN_MM, table, this::attempt);
  }

  private Optional<Canvas> attempt(PlanView view, Box sheet) {
    keyed.clear();
    tiny.clear();
    Canvas canvas = new Canvas();
    List<Seg> lines = new ArrayList<>();
    for (NamedOutline room : plan.rooms()) {
      List<Pt> walls = view.polygon(room.outline());
      canvas.polygon(Ink.line(0.35).filled(Ink.Tone.WHITE), walls);
      canvas.touch(room.target(), walls);
      lines.addAll(Polygons.sides(walls));
    }
    List<SymbolSpots.Wanted> wanted =
        plan.marks().stream()
            .map(mark -> view.at(mark.point()))
            .map(at -> new SymbolSpots.Wanted(at, at, new Pt(1, 0), new Pt(0, 1)))
            .toList();
    List<Pt> paper = paper(sheet);
    Optional<List<SymbolSpots.Placed>> placed = SymbolSpots.place(paper, sheet, wanted, 0);
    if (placed.isEmpty()) {
      return Optional.empty();
    }
    List<Box> symbols = new ArrayList<>();
    placed.get().forEach(spot -> symbols.add(Symbols.box(spot.centre())));
    List<Box> names = names(canvas, view, List.copyOf(symbols));
    List<TextBlock> labels =
        new ArrayList<>(
            Labels.texts(plan.marks().stream().map(FloorPlan.FloorMark::label).toList()));
    tiny.forEach(
        room -> {
          symbols.add(room.dot());
          labels.add(room.number());
        });
    Optional<List<PlacedLabel>> places =
        LabelPlacer.place(new Surroundings(sheet, names, lines), Labels.wishes(symbols, labels));
    if (places.isEmpty()) {
      return Optional.empty();
    }
    placed.get().forEach(spot -> spot.drawTie(canvas));
    places.get().forEach(place -> place.leader().ifPresent(canvas::leader));
    for (int i = 0; i < symbols.size(); i++) {
      Pt centre = symbols.get(i).centre();
      if (i < plan.marks().size()) {
        canvas.symbol(plan.marks().get(i).symbol(), centre);
        canvas.touch(plan.marks().get(i).target(), symbols.get(i), places.get().get(i).box());
      } else {
        canvas.circle(Ink.SOLID, centre, DOT_MM / 2);
      }
      Labels.draw(canvas, labels.get(i), places.get().get(i), centre);
    }
    return Optional.of(canvas);
  }

  private List<Box> names(Canvas canvas, PlanView view, List<Box> symbols) {
    List<Box> taken = new ArrayList<>(symbols);
    for (NamedOutline room : plan.rooms()) {
      if (room.name().isBlank()) {
        continue;
      }
      List<Pt> walls = view.polygon(room.outline());
      Optional<RoomNames.PlacedName> name = RoomNames.place(room.name(), walls, taken, List.of());
      if (name.isEmpty()) {
        keyed.add(List.of(room.name()));
        TextBlock number =
            new TextBlock(List.of(String.valueOf(keyed.size())), Item.Type.SMALL_BOLD);
        name = RoomNames.place(number, walls, taken, List.of());
        if (name.isEmpty()) {
          Pt middle = new Item.Path(walls, true, Ink.THIN).bounds().centre();
          tiny.add(new TinyRoom(Box.around(middle, DOT_MM, DOT_MM), number));
        }
      }
      name.ifPresent(
          found -> {
            found.draw(canvas);
            taken.add(found.box());
          });
    }
    return taken.subList(symbols.size(), taken.size());
  }

  static List<Pt> paper(Box sheet) {
    return List.of(
        new Pt(sheet.left(), sheet.top()),
        new Pt(sheet.right(), sheet.top()),
        new Pt(sheet.right(), sheet.bottom()),
        new Pt(sheet.left(), sheet.bottom()));
  }
}
