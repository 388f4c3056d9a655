package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.compose.Describe;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.FloorPlan;
import wallbook.compose.drawing.FloorPlan.FloorMark;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.Legend;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.NorthArrow;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.ScaleUnit;
import wallbook.compose.drawing.Spot;
import wallbook.compose.drawing.SymbolKind;
import wallbook.geometry.RoomOutline;
import wallbook.geometry.Wall;
import wallbook.quantity.Length;
import wallbook.record.Floor;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.Space;
import wallbook.wording.Phrase;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/**
 * Turns floors, rooms and walls of a job into drawings for one reader. On a screen a touch of a
 * place leads to {@code place/<id>}, of a head to {@code head/<id>}, of a room to {@code
 * room/<id>}.
 */
public final class PlanDrawings {
  private static final double QUIET_ROOM_PLAN_MM = 115;
  private static final double ROOM_PLAN_MM = 130;
  private static final double FLOOR_PLAN_MM = 200;

  /** A drawing of up to so many marks is legible at the smaller height. */
  private static final int QUIET_MARKS = 3;

  private static final double LEGEND_MM = 40;
  private static final int MOST_LABELS = 4;

  /** Width of rooms and walls on a screen, where a phone has less room than a page. */
  private static final double SCREEN_MM = 130;

  /** A drawing of more marks is legible at the full width only. */
  private static final int SCREEN_MARKS = 10;

  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final double usualWidthMm;

  /** Drawings for a page of paper. */
  public PlanDrawings(Job job, Wording wording) {
    this(job, wording, Frame.PAGE_WIDTH_MM);
  }

  /** Drawings for a screen, on which large ones are shown in part. */
  public static PlanDrawings forScreen(Job job, Wording wording) {
    return new PlanDrawings(job, wording, SCREEN_MM);
  }

  private PlanDrawings(Job job, Wording wording, double usualWidthMm) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.usualWidthMm = usualWidthMm;
  }

  /** The unit of scale bars for this reader. */
  public ScaleUnit unit() {
    return wording.quantities().units() == UnitSystem.METRIC ? ScaleUnit.METRE : ScaleUnit.FOOT;
  }

  /** Where true north is on the plans, if that is recorded. */
  public Optional<NorthArrow> north() {
    return job.facts()
        .north()
        .map(a -> new NorthArrow(a.inDegrees(), wording.say("drawing.north")));
  }

  /**
   * The floor with its rooms that have an outline and the heads on it; nothing for a floor of fewer
   * than two rooms, whose own sheet says as much.
   */
  public Optional<FloorPlan> floor(Floor floor) {
    List<NamedOutline> rooms =
        job.spaces().stream()
            .filter(s -> s.floor().equals(floor.id()) && s.outline().size() >= 3)
            .filter(s -> !s.kind().isOutdoor())
            .map(PlanParts::named)
            .toList();
    if (rooms.size() < 2) {
      return Optional.empty();
    }
    List<FloorMark> marks =
        job.heads().stream()
            .filter(h -> job.space(h.space()).floor().equals(floor.id()))
            .flatMap(
                h ->
                    at(h).stream()
                        .map(
                            p ->
                                new FloorMark(
                                    Symbols.of(h.kind()),
                                    p,
                                    List.of(h.name()),
                                    Optional.of(PlanParts.target(h)))))
            .toList();
    String title = say("drawing.floor.title", "floor", floor.name());
    String alt =
        say(
            "drawing.floor.alt",
            "floor",
            floor.name(),
            "rooms",
            rooms.stream().map(NamedOutline::name).collect(Collectors.joining(", ")));
    return Optional.of(
        new FloorPlan(Frame.pageWide(title, alt, FLOOR_PLAN_MM), rooms, marks, north(), unit()));
  }

  /** The room from above; nothing if its outline is not recorded. */
  public Optional<RoomPlan> room(Space space, List<Place> places) {
    if (space.outline().size() < 3) {
      return Optional.empty();
    }
    List<Mark> marks = new ArrayList<>();
    for (Place place : places) {
      spot(space, place)
          .ifPresent(
              s ->
                  marks.add(
                      new Mark(
                          Symbols.of(place),
                          s,
                          labels(place),
                          Optional.of(PlanParts.target(place)))));
    }
    for (Head head : job.heads()) {
      if (head.space().equals(space.id())) {
        at(head)
            .ifPresent(
                p ->
                    marks.add(
                        new Mark(
                            Symbols.of(head.kind()),
                            new Spot.At(p),
                            List.of(head.name()),
                            Optional.of(PlanParts.target(head)))));
      }
    }
    List<String> wallLengths =
        new RoomOutline(space.outline())
            .walls().stream().map(w -> wording.quantities().position(w.length())).toList();
    String title = say("drawing.room.title", "room", space.name());
    String alt =
        say(
            "drawing.room.alt",
            "room",
            space.name(),
            "places",
            Phrase.counted("drawing.marks", marks.size()));
    return Optional.of(
        new RoomPlan(
            frame(title, alt, marks.size(), QUIET_ROOM_PLAN_MM, ROOM_PLAN_MM),
            PlanParts.outline(space),
            wallLengths,
            marks,
            neighbours(space),
            north(),
            unit(),
            RoomPlan.LabelStyle.AS_FITS));
  }

  /** The walls that hold a place at a known offset and height, each seen from inside. */
  public List<Drawing> elevations(Space space, List<Place> places) {
    return new WallDrawings(this, wording, describe).of(space, places);
  }

  /** The symbols that the given marks use. */
  public Drawing legend(Collection<SymbolKind> used) {
    return Legend.of(
        Frame.pageWide(
            wording.say("drawing.legend.title"), wording.say("drawing.legend.alt"), LEGEND_MM),
        used,
        kind -> wording.say("symbol." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-')),
        wording.say("drawing.legend.note"));
  }

  /** Where a head stands on the plan, if that is recorded. */
  public Optional<PointM> at(Head head) {
    if (head.at().isPresent()) {
      return head.at().map(PlanParts::point);
    }
    return onWall(job.space(head.space()), head.wall(), head.offset());
  }

  /** Labels of the cables at a place, or its name if none end there. */
  public List<String> labels(Place place) {
    List<String> labels = job.runsAt(place).stream().map(Run::label).toList();
    if (labels.isEmpty()) {
      return List.of(place.label().orElse(place.name()));
    }
    if (labels.size() <= MOST_LABELS) {
      return labels;
    }
    List<String> shown = new ArrayList<>(labels.subList(0, MOST_LABELS - 1));
    shown.add(
        wording.say(Phrase.counted("drawing.more-labels", labels.size() - (MOST_LABELS - 1))));
    return shown;
  }

  /** A frame as wide as the reader has room for; lower for a few marks. */
  Frame frame(String title, String alt, int marks, double quietMm, double fullMm) {
    return new Frame(
        title,
        alt,
        marks <= SCREEN_MARKS ? usualWidthMm : Frame.PAGE_WIDTH_MM,
        marks <= QUIET_MARKS ? quietMm : fullMm);
  }

  private List<NamedOutline> neighbours(Space space) {
    return job.spaces().stream()
        .filter(
            s ->
                !s.id().equals(space.id())
                    && s.floor().equals(space.floor())
                    && s.kind().isOutdoor() == space.kind().isOutdoor()
                    && s.outline().size() >= 3)
        .map(PlanParts::named)
        .toList();
  }

  private Optional<Spot> spot(Space space, Place place) {
    if (place.wall().isPresent() && place.offset().isPresent()) {
      List<Wall> walls = new RoomOutline(space.outline()).walls();
      for (int i = 0; i < walls.size(); i++) {
        if (walls.get(i).letter().equals(place.wall().get())) {
          return Optional.of(new Spot.OnWall(i, place.offset().get().inMetres()));
        }
      }
    }
    return place.at().map(p -> new Spot.At(PlanParts.point(p)));
  }

  private static Optional<PointM> onWall(
      Space space, Optional<String> letter, Optional<Length> offset) {
    if (letter.isEmpty() || offset.isEmpty() || space.outline().size() < 3) {
      return Optional.empty();
    }
    return new RoomOutline(space.outline())
        .wall(letter.get())
        .map(w -> PlanParts.point(w.at(offset.get())));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
