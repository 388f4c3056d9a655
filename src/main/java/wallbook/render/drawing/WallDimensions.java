package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PointM;

/**
 * Draws the letter and the length of every wall outside the outline, where they meet nothing drawn
 * before.
 */
final class WallDimensions {
  /** The room that dimensions usually take around a plan. */
  static final double MARGIN_MM = 13;

  private static final double LINE_OFF_MM = 5.5;
  private static final double STEP_OFF_MM = 4;
  private static final double LETTER_RADIUS_MM = 2;
  private static final double TICK_MM = 0.8;
  private static final double[] SHARES = {
    0.5, 0.38, 0.62, 0.25, 0.75, 0.1, 0.9, -0.3, 1.3, -0.8, 1.8
  };

  private final Canvas canvas;
  private final List<Seg> walls;
  private final List<Box> taken = new ArrayList<>();
  private final List<Seg> lines = new ArrayList<>();

  WallDimensions(Canvas canvas, List<Pt> polygon, List<Box> taken) {
    this.canvas = canvas;
    this.walls = Polygons.sides(polygon);
    this.taken.addAll(taken);
  }

  /** The boxes of the texts drawn, after those given. */
  List<Box> taken() {
    return List.copyOf(taken);
  }

  /** The dimension lines drawn. */
  List<Seg> lines() {
    return List.copyOf(lines);
  }

  void draw(PlanView view, Outline outline, List<String> lengths) {
    for (int wall = 0; wall < outline.wallCount(); wall++) {
      PointM inward = outline.inward(wall);
      Pt outward = new Pt(-inward.xM(), inward.yM());
      Seg side = new Seg(view.at(outline.wallStart(wall)), view.at(outline.wallEnd(wall)));
      draw(side, outward, Outline.wallLetter(wall), PlainText.clean(lengths.get(wall)));
    }
  }

  private void draw(Seg side, Pt outward, String letter, String length) {
    Layout best = null;
    double fewest = Double.POSITIVE_INFINITY;
    for (double off : offsets()) {
      for (double share : SHARES) {
        Layout layout = layout(side, outward, off, share, letter, length);
        double price = layout.collisions(taken, walls);
        if (price < fewest) {
          best = layout;
          fewest = price;
        }
        if (fewest == 0) {
          paint(side, outward, best, length);
          return;
        }
      }
    }
    paint(side, outward, best, length);
  }

  private static double[] offsets() {
    double[] offsets = new double[10];
    for (int i = 0; i < 5; i++) {
      offsets[i] = LINE_OFF_MM + i * STEP_OFF_MM;
      offsets[5 + i] = -offsets[i];
    }
    return offsets;
  }

  private record Layout(double off, Pt letterAt, String letter, Item.Words words) {
    List<Box> boxes() {
      Box disc = Box.around(letterAt, 2 * LETTER_RADIUS_MM, 2 * LETTER_RADIUS_MM);
      return words.text().isBlank() ? List.of(disc) : List.of(disc, words.bounds());
    }

    double collisions(List<Box> taken, List<Seg> walls) {
      double count = 0;
      for (Box box : boxes()) {
        Box clear = box.grown(0.4);
        count += 10 * taken.stream().filter(clear::overlaps).count();
        count += walls.stream().filter(clear::isCrossedBy).count();
      }
      return count;
    }
  }

  private static Layout layout(
      Seg side, Pt outward, double off, double share, String letter, String length) {
    Pt letterAt = side.a().toward(side.b(), share).plus(outward.times(off));
    Pt along = side.b().minus(side.a()).unit();
    double turn = Math.toDegrees(Math.atan2(along.y(), along.x()));
    turn = turn > 89.999 ? turn - 180 : turn < -90.001 ? turn + 180 : turn;
    Item.Type type = Item.Type.LABEL;
    double textOff = LETTER_RADIUS_MM + 0.7 + TextMeasure.midMm(type);
    Pt middle = letterAt.plus(outward.times(Math.signum(off) * textOff));
    double radians = Math.toRadians(turn);
    Pt down = new Pt(-Math.sin(radians), Math.cos(radians)).times(TextMeasure.midMm(type));
    return new Layout(
        off,
        letterAt,
        letter,
        new Item.Words(middle.plus(down), length, type, Item.Align.CENTRE, turn));
  }

  private void paint(Seg side, Pt outward, Layout layout, String length) {
    Pt along = side.b().minus(side.a()).unit();
    Pt from = side.a().plus(outward.times(layout.off()));
    Pt to = side.b().plus(outward.times(layout.off()));
    if (!length.isBlank()) {
      Pt overshoot = outward.times(Math.signum(layout.off()));
      canvas.line(Ink.FAINT, side.a().plus(overshoot), from.plus(overshoot));
      canvas.line(Ink.FAINT, side.b().plus(overshoot), to.plus(overshoot));
      canvas.line(Ink.THIN, from, to);
      Pt slash = along.plus(outward).unit().times(TICK_MM);
      for (Pt end : List.of(from, to)) {
        canvas.line(Ink.MEDIUM, end.minus(slash), end.plus(slash));
      }
      lines.add(new Seg(from, to));
      lines.add(new Seg(side.a(), from));
      lines.add(new Seg(side.b(), to));
    }
    letter(layout);
    taken.addAll(layout.boxes());
    if (!length.isBlank()) {
      canvas.words(layout.words());
    }
  }

  private void letter(Layout layout) {
    canvas.circle(Ink.THIN.filled(Ink.Tone.WHITE), layout.letterAt(), LETTER_RADIUS_MM);
    Item.Type type = Item.Type.LABEL_BOLD;
    canvas.words(
        new Pt(layout.letterAt().x(), layout.letterAt().y() + TextMeasure.midMm(type)),
        layout.letter(),
        type,
        Item.Align.CENTRE);
  }
}
