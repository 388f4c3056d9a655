package wallbook.compose.labelmap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.location.TieSolver;
import wallbook.assess.location.TiedPoint;
import wallbook.compose.Describe;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.SitePlan;
import wallbook.compose.drawing.SitePlan.FixedCorner;
import wallbook.compose.drawing.SitePlan.SiteMark;
import wallbook.compose.figure.Symbols;
import wallbook.compose.labelmap.LabelMapView.GroundsSheet;
import wallbook.compose.labelmap.LabelMapView.TieRow;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.Space;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** The grounds: every place that is found by ties, on a plan of the site and in a table. */
final class Grounds {
  private static final double SITE_PLAN_MM = 190;

  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Describe describe;
  private final PlanDrawings drawings;
  private final TieSolver ties = new TieSolver(new Tables());

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
    Map<Place, TiedPoint.Found> found = new LinkedHashMap<>();
    for (Place place : tied) {
      if (ties.solve(place, job) instanceof TiedPoint.Found point) {
        found.put(place, point);
      }
    }
    Optional<SitePlan> plan = plan(found);
    return Optional.of(
        new GroundsSheet(
            plan.map(p -> p),
            plan.map(p -> drawings.legend(p.marks().stream().map(SiteMark::symbol).toList())),
            tied.stream().map(this::row).toList()));
  }

  private Optional<SitePlan> plan(Map<Place, TiedPoint.Found> found) {
    List<NamedOutline> houses = houses();
    if (houses.isEmpty() || found.isEmpty()) {
      return Optional.empty();
    }
    List<NamedOutline> areas =
        job.spaces().stream()
            .filter(s -> s.kind().isOutdoor() && s.outline().size() >= 3)
            .map(s -> new NamedOutline(s.name(), PlanDrawings.outline(s)))
            .toList();
    Set<String> used = new LinkedHashSet<>();
    List<SiteMark> marks = new ArrayList<>();
    found.forEach(
        (place, point) -> {
          place.ties().forEach(tie -> used.add(tie.from()));
          marks.add(mark(place, point));
        });
    List<FixedCorner> corners =
        used.stream()
            .map(job::corner)
            .map(c -> new FixedCorner(c.name(), PlanDrawings.point(c.at())))
            .toList();
    String alt =
        say(
            "drawing.grounds.alt",
            "places",
            found.keySet().stream()
                .map(p -> p.name() + ": " + describe.where(p))
                .collect(Collectors.joining("; ")));
    return Optional.of(
        new SitePlan(
            Frame.pageWide(wording.say("drawing.grounds.title"), alt, SITE_PLAN_MM),
            houses,
            areas,
            corners,
            marks,
            drawings.north(),
            drawings.unit()));
  }

  /**
   * Rooms of the entrance level, whose outlines together are the house as it stands on the ground.
   */
  private List<NamedOutline> houses() {
    return job.spaces().stream()
        .filter(s -> !s.kind().isOutdoor() && s.outline().size() >= 3)
        .filter(s -> job.floor(s.floor()).level() == 0)
        .map(s -> new NamedOutline("", PlanDrawings.outline(s)))
        .toList();
  }

  private SiteMark mark(Place place, TiedPoint.Found point) {
    return new SiteMark(
        Symbols.of(place),
        PlanDrawings.point(point.point()),
        drawings.labels(place),
        place.ties().stream()
            .map(
                tie ->
                    new SitePlan.Tie(
                        job.corner(tie.from()).name(),
                        wording.quantities().position(tie.distance())))
            .toList(),
        Optional.empty());
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

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
