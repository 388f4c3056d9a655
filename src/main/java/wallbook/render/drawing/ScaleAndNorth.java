package wallbook.render.drawing;

import java.util.List;
import java.util.Optional;
import wallbook.compose.drawing.NorthArrow;

/** The strip under every plan: scale bar with its ratio at the left, north arrow at the right. */
final class ScaleAndNorth {
  /** Height of the strip. */
  static final double HEIGHT_MM = 18;

  private static final double[] BAR_LENGTHS = {
    0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000
  };
  private static final double LONGEST_BAR_MM = 52;
  private static final double ARROW_MM = 5;

  private ScaleAndNorth() {}

  static void draw(
      Canvas canvas, Scale scale, Optional<NorthArrow> north, double top, double width) {
    bar(canvas, scale, new Pt(0.5, top + 9));
    north.ifPresent(arrow -> arrow(canvas, arrow, new Pt(width - 9, top + HEIGHT_MM / 2)));
  }

  /**
   * Length of the scale bar in units of the scale: the longest round length with room on the sheet.
   */
  static double barUnits(Scale scale) {
    double longest = BAR_LENGTHS[0];
    for (double length : BAR_LENGTHS) {
      if (scale.mm(length * scale.unitM()) <= LONGEST_BAR_MM) {
        longest = length;
      }
    }
    return longest;
  }

  private static void bar(Canvas canvas, Scale scale, Pt start) {
    double units = barUnits(scale);
    double length = scale.mm(units * scale.unitM());
    double thick = 1.2;
    for (int part = 0; part < 4; part++) {
      double from = start.x() + length * part / 4;
      Box box = new Box(from, start.y(), from + length / 4, start.y() + thick);
      Ink.Tone tone = part % 2 == 0 ? Ink.Tone.BLACK : Ink.Tone.WHITE;
      canvas.box(Ink.THIN.filled(tone), box);
    }
    double base = start.y() + thick + 3.2;
    canvas.words(new Pt(start.x(), base), "0", Item.Type.SMALL, Item.Align.LEFT);
    canvas.words(
        new Pt(start.x() + length / 2, base), plain(units / 2), Item.Type.SMALL, Item.Align.CENTRE);
    canvas.words(
        new Pt(start.x() + length, base),
        plain(units) + " " + scale.symbol(),
        Item.Type.SMALL,
        Item.Align.CENTRE);
    canvas.words(
        new Pt(start.x(), start.y() - 1.4), scale.text(), Item.Type.SMALL, Item.Align.LEFT);
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }

  private static void arrow(Canvas canvas, NorthArrow north, Pt centre) {
    double angle = Math.toRadians(north.clockwiseFromPageUpDeg());
    Pt ahead = new Pt(Math.sin(angle), -Math.cos(angle));
    Pt aside = new Pt(-ahead.y(), ahead.x());
    Pt tip = centre.plus(ahead.times(ARROW_MM));
    Pt tail = centre.plus(ahead.times(-0.4 * ARROW_MM));
    Pt foot = centre.plus(ahead.times(-0.7 * ARROW_MM));
    Pt left = foot.plus(aside.times(-0.45 * ARROW_MM));
    Pt right = foot.plus(aside.times(0.45 * ARROW_MM));
    canvas.polygon(Ink.THIN.filled(Ink.Tone.WHITE), List.of(tip, right, tail));
    canvas.polygon(Ink.THIN.filled(Ink.Tone.BLACK), List.of(tip, tail, left));
    Pt letter = centre.plus(ahead.times(ARROW_MM + 2.2));
    canvas.words(
        new Pt(letter.x(), letter.y() + TextMeasure.midMm(Item.Type.LABEL_BOLD)),
        north.letter(),
        Item.Type.LABEL_BOLD,
        Item.Align.CENTRE);
  }
}
