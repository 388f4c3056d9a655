package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallbook.compose.drawing.ElevationMark;

/**
 * The offsets and heights of the plates of an elevation as ordinates: a thin line from each plate
 * down to a row of offsets, all from the left-hand corner, and one to the right to a column of
 * heights, all from the finished floor. Plates that share an ordinate share its line and text.
 */
final class ElevationOrdinates {
  private static final double JOG_FROM_MM = 3;
  private static final double JOG_TO_MM = 7;
  private static final double STEP_MM = 3.2;
  private static final Item.Type TYPE = Item.Type.LABEL;
  private static final Ink PATH = Ink.FAINT.dashed(Ink.Dash.SHORT);

  private final Canvas canvas;
  private final ElevationView view;
  private final List<Seg> lines = new ArrayList<>();

  ElevationOrdinates(Canvas canvas, ElevationView view) {
    this.canvas = canvas;
    this.view = view;
  }

  /** The thin lines drawn across the wall. */
  List<Seg> lines() {
    return List.copyOf(lines);
  }

  /** One ordinate and the plate farthest from its text. */
  private record Ordinate(double wanted, String text, Pt plate) {}

  /** Whether the ordinates of these plates fit beside a wall of this size on a sheet. */
  boolean fit(List<ElevationMark> marks, double sheetWidth) {
    return byOffset(marks).size() * STEP_MM <= sheetWidth - 6
        && byHeight(marks).size() * STEP_MM <= view.floorY();
  }

  /** Draws the row of offsets; returns its lower edge. */
  double drawOffsets(List<ElevationMark> marks, double sheetWidth) {
    List<Ordinate> ordinates = byOffset(marks);
    double[] spread = spread(ordinates, 3, sheetWidth - 3);
    double floor = view.floorY();
    double lowest = floor;
    for (int i = 0; i < spread.length; i++) {
      Ordinate ordinate = ordinates.get(i);
      double x = ordinate.wanted();
      path(ordinate.plate(), new Pt(x, floor));
      canvas.line(
          Ink.THIN,
          new Pt(x, floor),
          new Pt(x, floor + JOG_FROM_MM),
          new Pt(spread[i], floor + JOG_TO_MM));
      Pt base = new Pt(spread[i] + TextMeasure.midMm(TYPE), floor + JOG_TO_MM + 0.6);
      Box box = canvas.words(new Item.Words(base, ordinate.text(), TYPE, Item.Align.RIGHT, -90));
      lowest = Math.max(lowest, box.bottom());
    }
    return lowest;
  }

  void drawHeights(List<ElevationMark> marks) {
    List<Ordinate> ordinates = byHeight(marks);
    double[] spread = spread(ordinates, 1.8, view.floorY() - 1.8);
    double edge = view.right();
    for (int i = 0; i < spread.length; i++) {
      Ordinate ordinate = ordinates.get(i);
      double y = ordinate.wanted();
      path(ordinate.plate(), new Pt(edge, y));
      canvas.line(
          Ink.THIN,
          new Pt(edge, y),
          new Pt(edge + JOG_FROM_MM, y),
          new Pt(edge + JOG_TO_MM, spread[i]));
      canvas.words(
          new Pt(edge + JOG_TO_MM + 0.6, spread[i] + TextMeasure.midMm(TYPE)),
          ordinate.text(),
          TYPE,
          Item.Align.LEFT);
    }
  }

  private static double[] spread(List<Ordinate> ordinates, double lowest, double highest) {
    double[] wanted = ordinates.stream().mapToDouble(Ordinate::wanted).toArray();
    return Spread.apart(wanted, STEP_MM, lowest, highest);
  }

  private void path(Pt from, Pt to) {
    canvas.line(PATH, from, to);
    lines.add(new Seg(from, to));
  }

  private List<Ordinate> byOffset(List<ElevationMark> marks) {
    Map<String, Ordinate> found = new LinkedHashMap<>();
    for (ElevationMark mark : marks) {
      Pt plate = view.at(mark.offsetM(), mark.heightM());
      String text = PlainText.clean(mark.offsetText());
      found.merge(
          Math.round(100 * plate.x()) + " " + text,
          new Ordinate(plate.x(), text, plate),
          (a, b) -> a.plate().y() <= b.plate().y() ? a : b);
    }
    return List.copyOf(found.values());
  }

  private List<Ordinate> byHeight(List<ElevationMark> marks) {
    Map<String, Ordinate> found = new LinkedHashMap<>();
    for (ElevationMark mark : marks) {
      Pt plate = view.at(mark.offsetM(), mark.heightM());
      String text = PlainText.clean(mark.heightText());
      found.merge(
          Math.round(100 * plate.y()) + " " + text,
          new Ordinate(plate.y(), text, plate),
          (a, b) -> a.plate().x() <= b.plate().x() ? a : b);
    }
    return List.copyOf(found.values());
  }
}
