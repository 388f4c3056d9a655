package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wallbook.assess.location.TieSolver;
import wallbook.assess.location.TiedPoint;
import wallbook.compose.Describe;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.SitePlan;
import wallbook.compose.drawing.SitePlan.FixedCorner;
import wallbook.compose.drawing.SitePlan.SiteMark;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Draws the house and its grounds with the places that are found by ties. */
public final class SitePlanDrawing {
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final PlanDrawings drawings;
  private final TieSolver ties;

  /**
   * @param tables of the ties' sureness
   */
  public SitePlanDrawing(Job job, Wording wording, Tables tables) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.drawings = new PlanDrawings(job, wording);
    this.ties = new TieSolver(tables);
  }

  /**
   * The plan with the places asked for, of those whose ties give a point; nothing if there is none,
   * or no outline of the house.
   *
   * @param tallestMm height that the drawing may take
   */
  public Optional<SitePlan> of(Predicate<Place> which, double tallestMm) {
    Map<Place, TiedPoint.Found> found = new LinkedHashMap<>();
    for (Place place : job.places()) {
      if (!place.ties().isEmpty()
          && which.test(place)
          && ties.solve(place, job) instanceof TiedPoint.Found point) {
        found.put(place, point);
      }
    }
    List<NamedOutline> houses = houses();
    if (houses.isEmpty() || found.isEmpty()) {
      return Optional.empty();
    }
    List<NamedOutline> areas =
        job.spaces().stream()
            .filter(s -> s.kind().isOutdoor() && s.outline().size() >= 3)
            .map(PlanParts::named)
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
            .map(c -> new FixedCorner(c.name(), PlanParts.point(c.at())))
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
            Frame.pageWide(wording.say("drawing.grounds.title"), alt, tallestMm),
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
        .map(s -> new NamedOutline("", PlanParts.outline(s)))
        .toList();
  }

  private SiteMark mark(Place place, TiedPoint.Found point) {
    return new SiteMark(
        Symbols.of(place),
        PlanParts.point(point.point()),
        drawings.labels(place),
        place.ties().stream()
            .map(
                tie ->
                    new SitePlan.Tie(
                        job.corner(tie.from()).name(),
                        wording.quantities().position(tie.distance())))
            .toList(),
        Optional.empty(),
        Optional.of(PlanParts.target(place)));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
