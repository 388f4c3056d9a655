package wallbook.compose.labelmap;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.Describe;
import wallbook.compose.drawing.SitePlan;
import wallbook.compose.drawing.SitePlan.SiteMark;
import wallbook.compose.figure.PlanDrawings;
import wallbook.compose.figure.SitePlanDrawing;
import wallbook.compose.labelmap.LabelMapView.GroundsSheet;
import wallbook.compose.labelmap.LabelMapView.TieRow;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.Space;
import wallbook.reference.Tables;
import wallbook.wording.Wording;

/** The grounds: every place that is found by ties, on a plan of the site and in a table. */
final class Grounds {
  private static final double SITE_PLAN_MM = 190;
  private static final Tables TABLES = new Tables();

  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Describe describe;
  private final PlanDrawings drawings;

  Grounds(Job job, Assessments assessments, Wording wording) {
    this.job = job;
    this.assessments = assessments;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.drawings = new PlanDrawings(job, wording);
  }

  /** The sheet; nothing if no place has ties. */
  Optional<GroundsSheet> sheet() {
    List<Place> tied = job.places().stream().filter(p -> !p.ties().isEmpty()).toList();
    if (tied.isEmpty()) {
      return Optional.empty();
    }
    Optional<SitePlan> plan =
        new SitePlanDrawing(job, wording, TABLES).of(place -> true, SITE_PLAN_MM);
    return Optional.of(
        new GroundsSheet(
            plan.map(p -> p),
            plan.map(p -> drawings.legend(p.marks().stream().map(SiteMark::symbol).toList())),
            tied.stream().map(this::row).toList()));
  }

  private TieRow row(Place place) {
    Space space = job.space(place.space());
    String cables = job.runsAt(place).stream().map(Run::label).collect(Collectors.joining(", "));
    return new TieRow(
        place.name(),
        space.name(),
        place.ties().stream().map(describe::tie).collect(Collectors.joining("; ")),
        place
            .height()
            .map(h -> wording.quantities().position(h))
            .orElseGet(() -> wording.say("not-recorded")),
        cables.isEmpty() ? wording.say("labelmap.no-cable") : cables,
        assessments.find(place.id(), "location.ties").map(this::agreement).orElse("—"));
  }

  private String agreement(Assessment assessment) {
    return assessment
        .limitedBy()
        .map(wording::say)
        .orElseGet(
            () ->
                assessment.missing().stream().map(wording::say).collect(Collectors.joining(", ")));
  }
}
