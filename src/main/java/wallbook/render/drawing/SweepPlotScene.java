package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import wallbook.compose.drawing.SweepPlot;
import wallbook.compose.drawing.SweepPlot.Curve;
import wallbook.compose.drawing.SweepPlot.CurveKind;
import wallbook.compose.drawing.SweepPlot.Sample;

/**
 * Lays out a plot over logarithmic frequency: limit dashed and heavy, measured values thin, worst
 * point ringed.
 */
final class SweepPlotScene {
  private static final double LEFT_MM = 16;
  private static final double BOTTOM_MM = 10;
  private static final double KEY_MM = 5.5;
  private static final double TALLEST_MM = 78;
  private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
  private static final int MOST_STEPS = 8;
  private static final double COLUMN_MM = 0.15;
  private static final Item.Type TYPE = Item.Type.SMALL;

  private final SweepPlot plot;
  private final Canvas canvas = new Canvas();
  private final Box area;
  private final double lowMHz;
  private final double highMHz;
  private final double step;
  private final double lowDb;
  private final double highDb;

  private SweepPlotScene(SweepPlot plot) {
    this.plot = plot;
    double height = Math.min(TALLEST_MM, plot.frame().maxHeightMm());
    area = new Box(LEFT_MM, KEY_MM, plot.frame().widthMm() - 5, height - BOTTOM_MM);
    List<Sample> all = plot.curves().stream().flatMap(curve -> curve.samples().stream()).toList();
    double first = all.stream().mapToDouble(Sample::frequencyMHz).min().orElseThrow();
    double last = all.stream().mapToDouble(Sample::frequencyMHz).max().orElseThrow();
    lowMHz = first < last ? first : first / 2;
    highMHz = first < last ? last : last * 2;
    double least = all.stream().mapToDouble(Sample::valueDb).min().orElseThrow();
    double most = all.stream().mapToDouble(Sample::valueDb).max().orElseThrow();
    step = step(most - least);
    lowDb = Math.floor(least / step) * step;
    highDb = Math.max(lowDb + step, Math.ceil(most / step) * step);
  }

  static Scene draw(SweepPlot plot) {
    SweepPlotScene layout = new SweepPlotScene(plot);
    layout.grid();
    List<Seg> lines = new ArrayList<>();
    plot.curves().forEach(curve -> lines.addAll(layout.curve(curve)));
    layout.key();
    layout.worst(lines);
    return layout.canvas.scene(plot.frame().widthMm(), layout.area.bottom() + BOTTOM_MM);
  }

  private static double step(double span) {
    for (double step : STEPS) {
      if (span / step <= MOST_STEPS) {
        return step;
      }
    }
    return span / MOST_STEPS;
  }

  Pt at(Sample sample) {
    double share = Math.log(sample.frequencyMHz() / lowMHz) / Math.log(highMHz / lowMHz);
    double up = (sample.valueDb() - lowDb) / (highDb - lowDb);
    return new Pt(area.left() + share * area.width(), area.bottom() - up * area.height());
  }

  private void grid() {
    int steps = (int) Math.round((highDb - lowDb) / step);
    for (int i = 0; i <= steps; i++) {
      double value = lowDb + i * step;
      double y = at(new Sample(lowMHz, value)).y();
      canvas.line(Ink.NEIGHBOUR, new Pt(area.left(), y), new Pt(area.right(), y));
      canvas.words(
          new Pt(area.left() - 1.2, y + TextMeasure.midMm(TYPE)),
          number(value),
          TYPE,
          Item.Align.RIGHT);
    }
    double free = area.left() - 4;
    for (int decade = (int) Math.floor(Math.log10(lowMHz));
        Math.pow(10, decade) <= highMHz;
        decade++) {
      for (int digit = 1; digit <= 9; digit++) {
        double frequency = digit * Math.pow(10, decade);
        if (frequency < lowMHz * 0.9999 || frequency > highMHz * 1.0001) {
          continue;
        }
        double x = at(new Sample(frequency, lowDb)).x();
        canvas.line(Ink.NEIGHBOUR, new Pt(x, area.top()), new Pt(x, area.bottom()));
        boolean named = digit == 1 || digit == 2 || digit == 5;
        double half = TextMeasure.widthMm(number(frequency), TYPE) / 2;
        if (named && x - half > free + 1) {
          canvas.words(new Pt(x, area.bottom() + 3.4), number(frequency), TYPE, Item.Align.CENTRE);
          free = x + half;
        }
      }
    }
    canvas.box(Ink.SYMBOL, area);
    Pt middle = area.centre();
    canvas.words(
        new Pt(middle.x(), area.bottom() + 7.6),
        plot.frequencyAxis(),
        Item.Type.LABEL,
        Item.Align.CENTRE);
    canvas.words(
        new Item.Words(
            new Pt(3.5, middle.y()),
            PlainText.clean(plot.valueAxis()),
            Item.Type.LABEL,
            Item.Align.CENTRE,
            -90));
  }

  private static String number(double value) {
    double rounded = Math.round(value * 1000) / 1000.0;
    return rounded == Math.rint(rounded)
        ? String.valueOf((long) rounded)
        : String.format(Locale.ROOT, "%s", rounded);
  }

  private static Ink ink(CurveKind kind) {
    return kind == CurveKind.LIMIT ? Ink.line(0.4).dashed(Ink.Dash.DASHED) : Ink.MEDIUM;
  }

  private List<Seg> curve(Curve curve) {
    List<Pt> points = thinned(curve.samples().stream().map(this::at).toList());
    if (points.size() == 1) {
      canvas.circle(Ink.SOLID, points.get(0), 0.5);
      return List.of();
    }
    canvas.line(ink(curve.kind()), points);
    List<Seg> lines = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      lines.add(new Seg(points.get(i - 1), points.get(i)));
    }
    return lines;
  }

  /**
   * Keeps the first, lowest, highest and last point of every column narrower than a line, so that
   * no peak is lost.
   */
  private static List<Pt> thinned(List<Pt> points) {
    List<Pt> kept = new ArrayList<>();
    int from = 0;
    while (from < points.size()) {
      int to = from;
      int low = from;
      int high = from;
      while (to + 1 < points.size() && points.get(to + 1).x() - points.get(from).x() < COLUMN_MM) {
        to++;
        low = points.get(to).y() > points.get(low).y() ? to : low;
        high = points.get(to).y() < points.get(high).y() ? to : high;
      }
      final int last = to;
      IntStream.of(from, low, high, last).sorted().distinct().forEach(i -> kept.add(points.get(i)));
      from = to + 1;
    }
    return kept;
  }

  private void key() {
    double x = area.left();
    for (Curve curve : plot.curves()) {
      canvas.line(ink(curve.kind()), new Pt(x, 2.2), new Pt(x + 9, 2.2));
      Box name =
          canvas.words(
              new Pt(x + 10.5, 2.2 + TextMeasure.midMm(Item.Type.LABEL)),
              curve.name(),
              Item.Type.LABEL,
              Item.Align.LEFT);
      x = name.right() + 6;
    }
  }

  private void worst(List<Seg> lines) {
    if (plot.worst().isEmpty()) {
      return;
    }
    SweepPlot.Callout callout = plot.worst().get();
    Pt point = at(callout.at());
    TextBlock text = TextBlock.wrapped(List.of(callout.text()), Item.Type.LABEL, 60);
    canvas.circle(Ink.MEDIUM, point, 1.3);
    Surroundings around = new Surroundings(area.grown(-1), List.of(), lines);
    LabelWish wish = new LabelWish(Box.around(point, 2.6, 2.6), text.widthMm(), text.heightMm());
    Optional<List<PlacedLabel>> placed = LabelPlacer.place(around, List.of(wish));
    placed.ifPresent(
        labels -> {
          labels.get(0).leader().ifPresent(canvas::leader);
          Labels.draw(canvas, text, labels.get(0), point);
        });
  }
}
