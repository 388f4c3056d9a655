package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.copper.Limit;
import wallbook.assess.copper.LimitLine;
import wallbook.assess.copper.LimitLines;
import wallbook.compose.Describe;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.SweepPlot;
import wallbook.compose.drawing.SweepPlot.Callout;
import wallbook.compose.drawing.SweepPlot.Curve;
import wallbook.compose.drawing.SweepPlot.CurveKind;
import wallbook.compose.drawing.SweepPlot.Sample;
import wallbook.compose.result.TestParts;
import wallbook.quantity.Decibels;
import wallbook.quantity.Quantity;
import wallbook.record.Job;
import wallbook.record.PairParameter;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.record.SweepPoint;
import wallbook.record.TestLimit;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * Draws the worst quantity of a full sweep: what was measured on the pair and from the end that
 * came nearest to the limit, and the limit, over frequency.
 */
public final class SweepDrawing {
  private static final double TALLEST_MM = 78;
  private static final double SAME_DECIBELS = 1e-6;

  private final Job job;
  private final Wording wording;
  private final LimitLines lines;

  public SweepDrawing(Job job, Wording wording, LimitLines lines) {
    this.job = job;
    this.wording = wording;
    this.lines = lines;
  }

  /** The worst quantity of a test with the assessment of it. */
  private record Worst(PairParameter parameter, LimitLine line, Assessment assessment) {
    double marginDb() {
      return ((Decibels) assessment.margin().orElseThrow()).inDecibels();
    }
  }

  /** The plot; nothing for a test without a sweep, or whose sweep has no limit to be judged by. */
  public Optional<SweepPlot> of(Run run, TestParts test) {
    List<SweepPoint> sweep = job.sweepOf(test.test());
    return worst(test)
        .flatMap(worst -> point(sweep, worst).map(point -> plot(run, test, sweep, worst, point)));
  }

  private Optional<Worst> worst(TestParts test) {
    List<Worst> found = new ArrayList<>();
    for (PairParameter parameter : PairParameter.values()) {
      Optional<LimitLine> line =
          test.test()
              .limit()
              .flatMap(l -> lines.line(l.standard(), l.category(), l.configuration(), parameter));
      Optional<Assessment> part =
          test.part(parameter.word().replace('_', '-'))
              .filter(a -> a.margin().filter(Decibels.class::isInstance).isPresent());
      if (line.isPresent() && part.isPresent()) {
        found.add(new Worst(parameter, line.get(), part.get()));
      }
    }
    return found.stream().min(Comparator.comparingDouble(Worst::marginDb));
  }

  /** The point of the sweep that the assessment speaks of. */
  private static Optional<SweepPoint> point(List<SweepPoint> sweep, Worst worst) {
    return sweep.stream()
        .filter(p -> p.parameter() == worst.parameter())
        .filter(p -> same(worst.assessment().value(), p.valueInDecibels()))
        .filter(
            p ->
                worst
                    .line()
                    .at(p.frequency())
                    .filter(l -> same(worst.assessment().limit(), l.value().inDecibels()))
                    .isPresent())
        .findFirst();
  }

  private static boolean same(Optional<Quantity> quantity, double decibels) {
    return quantity
        .filter(Decibels.class::isInstance)
        .map(q -> Math.abs(((Decibels) q).inDecibels() - decibels) < SAME_DECIBELS)
        .orElse(false);
  }

  private SweepPlot plot(
      Run run, TestParts test, List<SweepPoint> sweep, Worst worst, SweepPoint point) {
    List<Sample> measured = new ArrayList<>();
    List<Sample> limits = new ArrayList<>();
    List<SweepPoint> curve =
        sweep.stream()
            .filter(p -> p.parameter() == worst.parameter())
            .filter(p -> p.pair().equals(point.pair()) && p.direction() == point.direction())
            .sorted(Comparator.comparing(SweepPoint::frequency))
            .toList();
    for (SweepPoint p : curve) {
      double megahertz = p.frequency().inMegahertz();
      if (measured.isEmpty() || measured.get(measured.size() - 1).frequencyMHz() < megahertz) {
        measured.add(new Sample(megahertz, p.valueInDecibels()));
        worst
            .line()
            .at(p.frequency())
            .map(Limit::value)
            .ifPresent(value -> limits.add(new Sample(megahertz, value.inDecibels())));
      }
    }
    String parameter = new Describe(job, wording).word(worst.parameter());
    Phrase named = named(point);
    return new SweepPlot(
        Frame.pageWide(
            say("drawing.sweep.title", "label", run.label(), "parameter", parameter),
            alt(run, test.test(), worst, point, parameter),
            TALLEST_MM),
        wording.say("drawing.sweep.frequency"),
        say("drawing.sweep.value", "parameter", parameter),
        List.of(
            new Curve(limitName(test.test()), CurveKind.LIMIT, limits),
            new Curve(wording.say(named), CurveKind.MEASURED, measured)),
        Optional.of(
            new Callout(
                new Sample(point.frequency().inMegahertz(), point.valueInDecibels()),
                say(
                    "drawing.sweep.worst",
                    "margin",
                    worst.assessment().margin().orElseThrow(),
                    "frequency",
                    point.frequency()))));
  }

  private static Phrase named(SweepPoint point) {
    return Phrase.of(
        "drawing.sweep.measured",
        "pair",
        point.pair(),
        "end",
        Phrase.of("pairs.end." + point.direction().word().replace('_', '-')));
  }

  private String limitName(RunTest test) {
    TestLimit limit = test.limit().orElseThrow();
    Describe describe = new Describe(job, wording);
    return say(
        "drawing.sweep.limit",
        "standard",
        describe.word(limit.standard()),
        "category",
        describe.word(limit.category()),
        "configuration",
        describe.word(limit.configuration()));
  }

  private String alt(Run run, RunTest test, Worst worst, SweepPoint point, String parameter) {
    return say(
        "drawing.sweep.alt",
        "label",
        run.label(),
        "date",
        test.date(),
        "parameter",
        parameter,
        "limit",
        limitName(test),
        "margin",
        worst.assessment().margin().orElseThrow(),
        "frequency",
        point.frequency());
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
