package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.compose.drawing.ElevationMark;
import wallbook.compose.drawing.Opening;
import wallbook.compose.drawing.WallElevation;

/**
 * Lays out a wall seen from inside: plates at their true offset and height with their ordinates.
 * Where the plates are too many, numbers stand at them and a table beneath carries label, offset
 * and height.
 */
final class ElevationScene {
  private static final double LEFT_MM = 14;
  private static final double RIGHT_MM = 28;
  private static final double UNDER_FLOOR_MM = 36;
  private static final double TABLE_SHARE = 0.45;
  private static final int SCALES_TRIED = 3;

  private final WallElevation wall;
  private final double width;

  private ElevationScene(WallElevation wall) {
    this.wall = wall;
    this.width = wall.frame().widthMm();
  }

  static Scene draw(WallElevation wall) {
    ElevationScene layout = new ElevationScene(wall);
    for (Way way : Way.values()) {
      for (Scale scale : layout.scales(way)) {
        Optional<Scene> scene = layout.attempt(scale, way);
        if (scene.isPresent()) {
          return scene.get();
        }
      }
    }
    throw new IllegalStateException("no room on the sheet for " + wall.marks().size() + " plates");
  }

  /** The ways to name plates, the most telling first. */
  private enum Way {
    TEXT_CLEAR_OF_LINES,
    TEXT,
    NUMBERS,
    TAGS;

    /** Paper above the wall; stacked symbols may need more. */
    double topMm() {
      return this == TAGS ? 45 : 2;
    }
  }

  private List<Scale> scales(Way way) {
    double table = way == Way.NUMBERS || way == Way.TAGS ? table().heightMm() : 0;
    double free =
        wall.frame().maxHeightMm() - way.topMm() - UNDER_FLOOR_MM - ScaleAndNorth.HEIGHT_MM - table;
    return Scale.all(wall.unit()).stream()
        .filter(scale -> scale.mm(wall.widthM()) <= width - LEFT_MM - RIGHT_MM)
        .filter(scale -> scale.mm(wall.heightM()) <= free)
        .limit(SCALES_TRIED)
        .toList();
  }

  private KeyTable table() {
    List<List<String>> rows = new ArrayList<>();
    for (ElevationMark mark : wall.marks()) {
      List<String> row = new ArrayList<>(mark.label());
      row.add(mark.offsetText());
      row.add(mark.heightText());
      rows.add(row);
    }
    return KeyTable.of(rows, width, TABLE_SHARE * wall.frame().maxHeightMm());
  }

  private ElevationView view(Scale scale, Way way) {
    double drawn = scale.mm(wall.widthM());
    double left = LEFT_MM + (width - LEFT_MM - RIGHT_MM - drawn) / 2;
    return new ElevationView(
        scale, new Pt(left, way.topMm() + scale.mm(wall.heightM())), left + drawn);
  }

  private Optional<Scene> attempt(Scale scale, Way way) {
    ElevationView view = view(scale, way);
    Canvas canvas = new Canvas();
    List<Seg> lines = new ArrayList<>(face(canvas, view));
    ElevationOrdinates ordinates = new ElevationOrdinates(canvas, view);
    double bottom = view.floorY();
    if (way != Way.TAGS) {
      if (!ordinates.fit(wall.marks(), width)) {
        return Optional.empty();
      }
      bottom = ordinates.drawOffsets(wall.marks(), width);
      ordinates.drawHeights(wall.marks());
      if (way == Way.TEXT_CLEAR_OF_LINES) {
        lines.addAll(ordinates.lines());
      }
    }
    bottom = dimensions(canvas, view, bottom + 4);
    if (!plates(canvas, view, way, lines)) {
      return Optional.empty();
    }
    ScaleAndNorth.draw(canvas, scale, Optional.empty(), bottom - 4, width);
    bottom += ScaleAndNorth.HEIGHT_MM - 6;
    if (way == Way.NUMBERS || way == Way.TAGS) {
      table().draw(canvas, bottom);
      bottom += table().heightMm();
    }
    double above = canvas.extent().top() - 1;
    canvas.shift(0, -above);
    return bottom - above <= wall.frame().maxHeightMm()
        ? Optional.of(canvas.scene(width, bottom - above))
        : Optional.empty();
  }

  /** The wall, its openings and the floor line; returns the lines that labels keep clear of. */
  private List<Seg> face(Canvas canvas, ElevationView view) {
    List<Pt> face = view.face(wall);
    canvas.polygon(Ink.line(0.35), face);
    List<Seg> lines = new ArrayList<>(Polygons.sides(face));
    for (Opening opening : wall.openings()) {
      Box box = view.box(opening);
      canvas.box(Ink.MEDIUM.filled(Ink.Tone.PALE), box);
      Pt high = new Pt(box.right(), box.top());
      Pt low = new Pt(box.left(), box.bottom());
      lines.add(new Seg(new Pt(box.left(), box.top()), high));
      lines.add(new Seg(high, new Pt(box.right(), box.bottom())));
      lines.add(new Seg(low, new Pt(box.left(), box.top())));
      lines.add(new Seg(low, new Pt(box.right(), box.bottom())));
    }
    Pt overrun = new Pt(4, 0);
    canvas.line(
        Ink.line(0.7), view.corner().minus(overrun), view.at(wall.widthM(), 0).plus(overrun));
    return lines;
  }

  /** The ceiling height at the left and the wall's width beneath; returns the lower edge. */
  private double dimensions(Canvas canvas, ElevationView view, double y) {
    Item.Type type = Item.Type.LABEL;
    Pt low = view.corner().minus(new Pt(6, 0));
    Pt high = new Pt(low.x(), view.at(0, wall.ceiling().get(0).yM()).y());
    canvas.line(Ink.FAINT, high.plus(new Pt(5, 0)), high.plus(new Pt(-1, 0)));
    canvas.line(Ink.FAINT, low.plus(new Pt(2, 0)), low.plus(new Pt(-1, 0)));
    dimension(canvas, low, high);
    Pt beside = new Pt(low.x() - 1.2, (low.y() + high.y()) / 2);
    String height = PlainText.clean(wall.heightText());
    canvas.words(new Item.Words(beside, height, type, Item.Align.CENTRE, -90));

    Pt left = new Pt(view.corner().x(), y);
    Pt right = new Pt(view.right(), y);
    dimension(canvas, left, right);
    Pt under = new Pt((left.x() + right.x()) / 2, y + 3.4);
    canvas.words(under, wall.widthText(), type, Item.Align.CENTRE);
    return y + 6;
  }

  private static void dimension(Canvas canvas, Pt from, Pt to) {
    canvas.line(Ink.THIN, from, to);
    Pt slash = new Pt(0.57, -0.57);
    for (Pt end : List.of(from, to)) {
      canvas.line(Ink.MEDIUM, end.minus(slash), end.plus(slash));
    }
  }

  private boolean plates(Canvas canvas, ElevationView view, Way way, List<Seg> lines) {
    List<ElevationMark> marks = wall.marks();
    Box sheet = new Box(1, 0.5, width - 1, view.floorY() - 0.6);
    Box symbolSheet = new Box(view.corner().x() - 3, 0, width, view.floorY() + Symbols.SIZE_MM);
    List<SymbolSpots.Wanted> wanted =
        marks.stream()
            .map(mark -> view.at(mark.offsetM(), mark.heightM()))
            .map(at -> new SymbolSpots.Wanted(at, at, new Pt(0, -1), new Pt(1, 0)))
            .toList();
    double tagMm = way == Way.TAGS ? Labels.TAG_MM : 0;
    Optional<List<SymbolSpots.Placed>> placed =
        SymbolSpots.place(view.face(wall), symbolSheet, wanted, tagMm);
    if (placed.isEmpty()) {
      return false;
    }
    List<SymbolSpots.Placed> spots = placed.get();
    boolean text = way == Way.TEXT || way == Way.TEXT_CLEAR_OF_LINES;
    List<TextBlock> labels =
        text
            ? Labels.texts(marks.stream().map(ElevationMark::label).toList())
            : Labels.numbers(marks.size());
    List<Box> symbols = spots.stream().map(spot -> Symbols.box(spot.centre())).toList();
    List<LabelWish> wishes = Labels.wishes(symbols, labels);
    Optional<List<PlacedLabel>> places =
        way == Way.TAGS
            ? Optional.of(Labels.tags(wishes))
            : LabelPlacer.place(new Surroundings(sheet, canvas.textBoxes(), lines), wishes);
    if (places.isEmpty()) {
      return false;
    }
    spots.forEach(spot -> spot.drawTie(canvas));
    places.get().forEach(place -> place.leader().ifPresent(canvas::leader));
    for (int i = 0; i < marks.size(); i++) {
      canvas.symbol(marks.get(i).symbol(), spots.get(i).centre());
      Labels.draw(canvas, labels.get(i), places.get().get(i), spots.get(i).centre());
      canvas.touch(marks.get(i).target(), symbols.get(i), places.get().get(i).box());
    }
    return true;
  }
}
