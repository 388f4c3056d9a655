package wallbook.assess.location;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.quantity.TapedLength;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Ties of one outdoor place: whether they agree, how well they cross, and how to find it again. */
final class TieAssessor {
  private static final Source GEOMETRY =
      new Source("plane geometry (distance-distance intersection)", Standing.CONFIRMED);

  private final TieSolver solver;
  private final TieFigures figures;

  TieAssessor(Tables tables) {
    this.solver = new TieSolver(tables);
    this.figures = new TieFigures(tables);
  }

  /** Nothing for a place without ties. */
  List<Assessment> about(Place place, Job job) {
    if (place.ties().isEmpty()) {
      return List.of();
    }
    TiedPoint tied = solver.solve(place, job);
    if (tied instanceof TiedPoint.Unknown unknown) {
      return List.of(asked(place).notStated(unknown.missing(), GEOMETRY));
    } else if (tied instanceof TiedPoint.Impossible impossible) {
      return List.of(impossible(place, impossible));
    } else if (tied instanceof TiedPoint.Touching) {
      return List.of(
          asked(place)
              .limitedBy(Phrase.of("location.ties.touching"))
              .verdict(Verdict.CONDITIONAL, GEOMETRY));
    }
    return found(place, (TiedPoint.Found) tied);
  }

  private static Assessment.Builder asked(Place place) {
    return Assessment.of(place.id(), "location.ties", Phrase.of("location.ties.asked"));
  }

  private Assessment impossible(Place place, TiedPoint.Impossible impossible) {
    Assessment.Builder asked = asked(place).limitedBy(impossible.reason());
    impossible
        .by()
        .ifPresent(
            by ->
                asked
                    .value(TapedLength.of(by))
                    .limit(
                        TapedLength.of(figures.slack()),
                        TapedLength.of(figures.slack().minus(by))));
    return asked.verdict(Verdict.BEYOND, GEOMETRY);
  }

  private List<Assessment> found(Place place, TiedPoint.Found found) {
    List<Assessment> all = new ArrayList<>();
    all.add(agreement(place, found));
    all.add(angle(place, found));
    found.ellipse().ifPresent(ellipse -> all.add(error(place, ellipse)));
    all.add(tape(place, found));
    return all;
  }

  private Assessment agreement(Place place, TiedPoint.Found found) {
    if (found.adjustment().isEmpty()) {
      return asked(place)
          .limitedBy(Phrase.of("location.ties.two"))
          .assuming(Phrase.of("location.assume.level"))
          .verdict(Verdict.WITHIN, GEOMETRY);
    }
    TieAdjustment adjustment = found.adjustment().get();
    Length limit = figures.largestResidual();
    Length worst = adjustment.worst();
    boolean agree = worst.compareTo(limit) <= 0;
    CornerTie tie = found.ties().get(adjustment.worstIndex());
    return asked(place)
        .value(TapedLength.of(worst))
        .limit(TapedLength.of(limit), TapedLength.of(limit.minus(worst)))
        .limitedBy(
            Phrase.of(
                agree ? "location.ties.agree" : "location.ties.off",
                "corner",
                tie.corner(),
                "tie",
                TapedLength.of(tie.distance())))
        .assuming(Phrase.of("location.assume.level"))
        .verdict(
            agree ? Verdict.WITHIN : Verdict.BEYOND,
            GEOMETRY.and(figures.source("residual-tolerance")));
  }

  private Assessment angle(Place place, TiedPoint.Found found) {
    Angle angle = found.angle();
    boolean sharp = angle.compareTo(figures.leastAngle()) < 0;
    boolean flat = angle.compareTo(figures.largestAngle()) > 0;
    boolean nearerFlat = angle.inDegrees() > 90;
    Angle limit = nearerFlat ? figures.largestAngle() : figures.leastAngle();
    Angle margin = nearerFlat ? limit.minus(angle) : angle.minus(limit);
    return Assessment.of(place.id(), "location.angle", Phrase.of("location.angle.asked"))
        .value(angle)
        .limit(limit, margin)
        .limitedBy(
            Phrase.of(
                sharp
                    ? "location.angle.sharp"
                    : flat ? "location.angle.flat" : "location.angle.good"))
        .verdict(
            sharp || flat ? Verdict.CONDITIONAL : Verdict.WITHIN, figures.source("least-angle"));
  }

  private Assessment error(Place place, ErrorEllipse ellipse) {
    return Assessment.of(
            place.id(),
            "location.error",
            Phrase.of(
                "location.error.asked",
                "major",
                TapedLength.of(ellipse.semiMajor()),
                "minor",
                TapedLength.of(ellipse.semiMinor()),
                "direction",
                ellipse.direction()))
        .value(TapedLength.of(ellipse.rootMeanSquare()))
        .assuming(Phrase.of("location.assume.tape", "error", TapedLength.of(figures.tapeError())))
        .assuming(Phrase.of("location.assume.level"))
        .verdict(Verdict.INFORMATION, GEOMETRY.and(figures.source("tape-error")));
  }

  /** How to find the place again with two tapes, and what a third must read. */
  private static Assessment tape(Place place, TiedPoint.Found found) {
    return Assessment.of(place.id(), "location.tape", TapeInstruction.of(found))
        .assuming(Phrase.of("location.assume.level"))
        .verdict(Verdict.INFORMATION, GEOMETRY);
  }
}
