package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.RoomPlan;

/**
 * Lays out a room plan: tries full labels at the larger scales first, then numbers with a table.
 */
final class RoomPlanScene {
  private static final double LABEL_WIDTH_MM = 34;
  private static final double LABEL_ROOM_MM = 16;
  private static final double TAG_MM = 5.5;
  private static final int SCALES_TRIED = 3;

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
    return tryAll(texts(), Optional.empty(), LABEL_ROOM_MM, 0);
  }

  /** A number at every mark, text beneath. */
  private Optional<Scene> numbered() {
    return tryAll(numbers(), Optional.of(table()), 0, 0);
  }

  /**
   * A number fixed to every symbol, text beneath: for walls so full that numbers on leaders find no
   * room.
   */
  private Optional<Scene> tagged() {
    return tryAll(numbers(), Optional.of(table()), 0, TAG_MM);
  }

  private KeyTable table() {
    return new KeyTable(plan.marks().stream().map(Mark::label).toList(), width);
  }

  private List<TextBlock> texts() {
    return plan.marks().stream()
        .map(mark -> TextBlock.wrapped(mark.label(), Item.Type.LABEL, LABEL_WIDTH_MM))
        .toList();
  }

  private List<TextBlock> numbers() {
    return IntStream.rangeClosed(1, plan.marks().size())
        .mapToObj(n -> new TextBlock(List.of(String.valueOf(n)), Item.Type.LABEL_BOLD))
        .toList();
  }

  private Optional<Scene> tryAll(
      List<TextBlock> labels, Optional<KeyTable> table, double sideMm, double tagMm) {
    double tableMm = table.map(KeyTable::heightMm).orElse(0.0);
    double height = plan.frame().maxHeightMm() - ScaleAndNorth.HEIGHT_MM - tableMm;
    PlanView.ExtentM extent = PlanView.ExtentM.of(plan.outline().corners());
    double around = 2 * (WallDimensions.MARGIN_MM + (plan.marks().isEmpty() ? 0 : sideMm));
    return Scale.all(plan.unit()).stream()
        .filter(scale -> scale.mm(extent.widthM()) + around <= width)
        .filter(scale -> scale.mm(extent.heightM()) + around <= height)
        .limit(SCALES_TRIED)
        .map(
            scale -> {
              double zone = Math.min(height, scale.mm(extent.heightM()) + around + 24);
              Box sheet = new Box(0, 0, width, zone);
              return attempt(PlanView.centred(scale, extent, sheet), sheet, labels, table, tagMm);
            })
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Scene> attempt(
      PlanView view, Box sheet, List<TextBlock> labels, Optional<KeyTable> table, double tagMm) {
    Canvas canvas = new Canvas();
    List<Pt> walls = view.polygon(plan.outline());
    Optional<List<SymbolSpots.Placed>> placed =
        SymbolSpots.place(view, plan.outline(), plan.marks(), sheet, tagMm);
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
    List<Seg> lines = new ArrayList<>(Polygons.sides(walls));
    lines.addAll(dimensions.lines());
    spots.stream()
        .filter(SymbolSpots.Placed::moved)
        .forEach(spot -> lines.add(new Seg(spot.truePoint(), spot.centre())));
    Surroundings around = new Surroundings(sheet, texts, lines);

    List<LabelWish> wishes = new ArrayList<>();
    for (int i = 0; i < symbols.size(); i++) {
      TextBlock label = labels.get(i);
      wishes.add(new LabelWish(symbols.get(i), label.widthMm(), label.heightMm()));
    }
    Optional<List<PlacedLabel>> places =
        tagMm > 0 ? Optional.of(tags(wishes)) : LabelPlacer.place(around, wishes);
    if (places.isEmpty()) {
      return Optional.empty();
    }
    canvas.polygon(Ink.WALL.filled(Ink.Tone.WHITE), walls);
    canvas.addAll(drawn);
    marks(canvas, spots, labels, places.get());
    Canvas whole = Neighbours.around(canvas, view, plan.neighbours(), around);
    whole.addAll(canvas);
    return Optional.of(finished(whole, view.scale(), table));
  }

  /** Labels right beside their symbols. */
  private static List<PlacedLabel> tags(List<LabelWish> wishes) {
    return wishes.stream()
        .map(
            wish -> {
              double left = wish.symbol().right() + 0.3;
              double top = wish.symbol().centre().y() - wish.heightMm() / 2;
              Box box = new Box(left, top, left + wish.widthMm(), top + wish.heightMm());
              return new PlacedLabel(box, Optional.empty());
            })
        .toList();
  }

  private void marks(
      Canvas canvas,
      List<SymbolSpots.Placed> spots,
      List<TextBlock> labels,
      List<PlacedLabel> places) {
    for (SymbolSpots.Placed spot : spots) {
      if (spot.moved()) {
        canvas.line(Ink.THIN, spot.truePoint(), spot.centre());
        canvas.circle(Ink.SOLID, spot.truePoint(), 0.4);
      }
    }
    for (PlacedLabel place : places) {
      place.leader().ifPresent(canvas::leader);
    }
    for (int i = 0; i < spots.size(); i++) {
      canvas.symbol(plan.marks().get(i).symbol(), spots.get(i).centre());
      Labels.draw(canvas, labels.get(i), places.get(i), spots.get(i).centre());
    }
  }

  /** Cuts empty paper above and below, and adds the strip with the scale and the table. */
  private Scene finished(Canvas canvas, Scale scale, Optional<KeyTable> table) {
    Box extent = canvas.extent();
    canvas.shift(0, 1 - extent.top());
    double bottom = extent.height() + 3;
    ScaleAndNorth.draw(canvas, scale, plan.north(), bottom, width);
    bottom += ScaleAndNorth.HEIGHT_MM;
    if (table.isPresent()) {
      table.get().draw(canvas, bottom);
      bottom += table.get().heightMm();
    }
    return canvas.scene(width, bottom);
  }
}
