package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.Spot;

/**
 * Lays out a room plan: tries full labels at the larger scales first, then numbers with a table.
 */
final class RoomPlanScene {
  private static final double LABEL_ROOM_MM = 16;
  private static final double OFF_WALL_MM = Symbols.SIZE_MM / 2 + 0.5;
  private static final double TABLE_SHARE = 0.55;

  private final RoomPlan plan;
  private final double width;

  private RoomPlanScene(RoomPlan plan) {
    this.plan = plan;
    this.width = plan.frame().widthMm();
  }

  static Scene draw(RoomPlan plan) {
    RoomPlanScene layout = new RoomPlanScene(plan);
    List<Supplier<Optional<Scene>>> ways =
        List.of(layout::labelled, layout::numbered, layout::tagged);
    int first = plan.labels() == RoomPlan.LabelStyle.AS_FITS ? 0 : 1;
    return ways.subList(first, ways.size()).stream()
        .map(Supplier::get)
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "no room on the sheet for " + plan.marks().size() + " marks"));
  }

  /** Text at every mark. */
  private Optional<Scene> labelled() {
    List<TextBlock> texts = Labels.texts(plan.marks().stream().map(Mark::label).toList());
    return tryAll(texts, Optional.empty(), plan.marks().isEmpty() ? 0 : LABEL_ROOM_MM, 0);
  }

  /** A number at every mark, text beneath. */
  private Optional<Scene> numbered() {
    return tryAll(Labels.numbers(plan.marks().size()), table(), 0, 0);
  }

  /**
   * A number fixed to every symbol, text beneath: for walls so full that numbers on leaders find no
   * room.
   */
  private Optional<Scene> tagged() {
    return tryAll(Labels.numbers(plan.marks().size()), table(), 0, Labels.TAG_MM);
  }

  private Optional<KeyTable> table() {
    return Optional.of(
        KeyTable.of(
            plan.marks().stream().map(Mark::label).toList(),
            width,
            TABLE_SHARE * plan.frame().maxHeightMm()));
  }

  private Optional<Scene> tryAll(
      List<TextBlock> labels, Optional<KeyTable> table, double sideMm, double tagMm) {
    PlanView.ExtentM extent = PlanView.ExtentM.of(plan.outline().corners());
    return new PlanSheet(plan.frame(), plan.unit(), extent, plan.north())
        .draw(
            WallDimensions.MARGIN_MM + sideMm,
            table,
            (view, sheet) -> attempt(view, sheet, labels, tagMm));
  }

  private Optional<Canvas> attempt(PlanView view, Box sheet, List<TextBlock> labels, double tagMm) {
    List<Pt> walls = view.polygon(plan.outline());
    List<SymbolSpots.Wanted> wanted =
        plan.marks().stream().map(mark -> wanted(view, mark.spot())).toList();
    Optional<List<SymbolSpots.Placed>> placed = SymbolSpots.place(walls, sheet, wanted, tagMm);
    if (placed.isEmpty()) {
      return Optional.empty();
    }
    List<SymbolSpots.Placed> spots = placed.get();
    List<Box> symbols = spots.stream().map(spot -> Symbols.box(spot.centre())).toList();
    List<Box> kept =
        symbols.stream()
            .map(box -> new Box(box.left(), box.top(), box.right() + tagMm, box.bottom()))
            .toList();

    Canvas drawn = new Canvas();
    WallDimensions dimensions = new WallDimensions(drawn, walls, kept);
    dimensions.draw(view, plan.outline(), plan.wallLengths());
    List<Box> texts = dimensions.taken().subList(symbols.size(), dimensions.taken().size());
    Surroundings around = new Surroundings(sheet, texts, lines(walls, dimensions, spots));
    List<LabelWish> wishes = Labels.wishes(symbols, labels);
    Optional<List<PlacedLabel>> places =
        tagMm > 0 ? Optional.of(Labels.tags(wishes)) : LabelPlacer.place(around, wishes);
    if (places.isEmpty()) {
      return Optional.empty();
    }
    Canvas canvas = new Canvas();
    canvas.polygon(Ink.WALL.filled(Ink.Tone.WHITE), walls);
    canvas.addAll(drawn);
    marks(canvas, spots, labels, places.get());
    Canvas whole = Neighbours.around(canvas, view, plan.neighbours(), around);
    whole.addAll(canvas);
    return Optional.of(whole);
  }

  private SymbolSpots.Wanted wanted(PlanView view, Spot spot) {
    if (spot instanceof Spot.OnWall on) {
      Outline outline = plan.outline();
      PointM inwardM = outline.inward(on.wall());
      Pt inward = new Pt(inwardM.xM(), -inwardM.yM());
      Pt along =
          view.at(outline.wallEnd(on.wall())).minus(view.at(outline.wallStart(on.wall()))).unit();
      Pt point = view.at(outline.onWall(on.wall(), on.offsetM()));
      return new SymbolSpots.Wanted(point, point.plus(inward.times(OFF_WALL_MM)), inward, along);
    }
    Pt point = view.at(((Spot.At) spot).point());
    return new SymbolSpots.Wanted(point, point, new Pt(1, 0), new Pt(0, 1));
  }

  private static List<Seg> lines(
      List<Pt> walls, WallDimensions dimensions, List<SymbolSpots.Placed> spots) {
    List<Seg> lines = new ArrayList<>(Polygons.sides(walls));
    lines.addAll(dimensions.lines());
    spots.stream()
        .filter(SymbolSpots.Placed::moved)
        .forEach(spot -> lines.add(new Seg(spot.truePoint(), spot.centre())));
    return lines;
  }

  private void marks(
      Canvas canvas,
      List<SymbolSpots.Placed> spots,
      List<TextBlock> labels,
      List<PlacedLabel> places) {
    spots.forEach(spot -> spot.drawTie(canvas));
    places.forEach(place -> place.leader().ifPresent(canvas::leader));
    for (int i = 0; i < spots.size(); i++) {
      canvas.symbol(plan.marks().get(i).symbol(), spots.get(i).centre());
      Labels.draw(canvas, labels.get(i), places.get(i), spots.get(i).centre());
      canvas.touch(
          plan.marks().get(i).target(), Symbols.box(spots.get(i).centre()), places.get(i).box());
    }
  }
}
