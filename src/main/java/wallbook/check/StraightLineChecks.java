package wallbook.check;

import java.util.Optional;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.geometry.BuildingPoint;
import wallbook.geometry.Whereabouts;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.reference.Tables;

/** A cable can't be shorter than the straight line between its ends. */
final class StraightLineChecks implements Check {
  private final Length tolerance;

  StraightLineChecks(Tables tables) {
    this.tolerance =
        Length.feet(tables.table("tie-practice").row("length-tolerance").number("value"));
  }

  @Override
  public void look(Job job, Findings findings) {
    for (Run run : job.runs()) {
      Optional<Length> line = straightLine(job, run.from(), run.to());
      if (run.length().isPresent()
          && line.isPresent()
          && run.length().get().plus(tolerance).compareTo(line.get()) < 0) {
        findings.add(
            RunFinding.of(
                Severity.ERROR,
                "length-shorter-than-straight-line",
                run.origin().position("length"),
                run,
                "length",
                run.length().get(),
                "line",
                line.get()));
      }
    }
  }

  /** In space where both heights are known, else on the plan, which is no more. */
  private static Optional<Length> straightLine(Job job, RunEnd from, RunEnd to) {
    Optional<BuildingPoint> a = Whereabouts.inBuilding(job, from);
    Optional<BuildingPoint> b = Whereabouts.inBuilding(job, to);
    return a.flatMap(start -> b.map(start::distanceTo))
        .or(
            () ->
                Whereabouts.onPlan(job, from)
                    .flatMap(
                        start ->
                            Whereabouts.onPlan(job, to)
                                .map(end -> BuildingPoint.horizontal(start, end))));
  }
}
