package wallbook.compose.security;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.assess.location.Positions;
import wallbook.compose.drawing.FloorPlan;
import wallbook.compose.drawing.FloorPlan.FloorMark;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.PointM;
import wallbook.compose.figure.PlanDrawings;
import wallbook.compose.figure.PlanParts;
import wallbook.compose.figure.Symbols;
import wallbook.compose.security.AnnexView.Plan;
import wallbook.record.Floor;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Floors with the number of each device at its place. */
final class DevicePlans {
  private static final double TALLEST_MM = 112;

  /** More marks than these are not told apart on one plan; the tables have them all. */
  private static final int MOST_MARKS = 60;

  private final Job job;
  private final Wording wording;
  private final PlanDrawings drawings;
  private final Positions positions;

  DevicePlans(Job job, Wording wording, Tables tables) {
    this.job = job;
    this.wording = wording;
    this.drawings = new PlanDrawings(job, wording);
    this.positions = new Positions(job, tables);
  }

  /** Plans of the floors that have a device within their rooms, from below. */
  List<Plan> of(Map<Place, Integer> numbers) {
    return job.floors().stream()
        .sorted(Comparator.comparingInt(Floor::level))
        .flatMap(floor -> plan(floor, numbers).stream())
        .toList();
  }

  private Optional<Plan> plan(Floor floor, Map<Place, Integer> numbers) {
    List<NamedOutline> rooms =
        job.spaces().stream()
            .filter(s -> s.floor().equals(floor.id()) && !s.kind().isOutdoor())
            .filter(s -> s.outline().size() >= 3)
            .map(s -> new NamedOutline(s.name(), PlanParts.outline(s)))
            .toList();
    List<FloorMark> marks = new ArrayList<>();
    numbers.forEach(
        (place, number) -> {
          boolean indoors = !job.space(place.space()).kind().isOutdoor();
          if (indoors && job.space(place.space()).floor().equals(floor.id())) {
            positions
                .of(place)
                .plan()
                .map(PlanParts::point)
                .ifPresent(at -> marks.add(mark(place, number, at)));
          }
        });
    if (rooms.isEmpty() || marks.isEmpty() || marks.size() > MOST_MARKS) {
      return Optional.empty();
    }
    String devices =
        numbers.entrySet().stream()
            .filter(e -> job.space(e.getKey().space()).floor().equals(floor.id()))
            .map(e -> e.getValue() + " " + e.getKey().name())
            .collect(Collectors.joining(", "));
    Frame frame =
        Frame.pageWide(
            wording.say(Phrase.of("annex.plan.title", "floor", floor.name())),
            wording.say(Phrase.of("annex.plan.alt", "floor", floor.name(), "devices", devices)),
            TALLEST_MM);
    return Optional.of(
        new Plan(
            floor.name(), new FloorPlan(frame, rooms, marks, drawings.north(), drawings.unit())));
  }

  private static FloorMark mark(Place place, int number, PointM at) {
    return new FloorMark(Symbols.of(place), at, List.of(Integer.toString(number)));
  }
}
