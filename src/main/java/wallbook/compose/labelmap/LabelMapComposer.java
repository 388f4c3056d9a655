package wallbook.compose.labelmap;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessments;
import wallbook.compose.Caution;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.FloorPlan;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.SymbolKind;
import wallbook.compose.figure.PanelDrawing;
import wallbook.compose.figure.PanelRuns;
import wallbook.compose.figure.PhotoView;
import wallbook.compose.figure.Photographs;
import wallbook.compose.figure.PlanDrawings;
import wallbook.compose.labelmap.LabelMapView.CableRow;
import wallbook.compose.labelmap.LabelMapView.FloorSheet;
import wallbook.compose.labelmap.LabelMapView.HeadSheet;
import wallbook.compose.labelmap.LabelMapView.PanelSheet;
import wallbook.compose.labelmap.LabelMapView.PlaceRow;
import wallbook.compose.labelmap.LabelMapView.PortRow;
import wallbook.compose.labelmap.LabelMapView.RoomSheet;
import wallbook.record.Floor;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.Space;
import wallbook.wording.Wording;

/** Composes the label map: every plate of the house with its labels and their other ends. */
public final class LabelMapComposer {
  private static final List<Caution> CAUTIONS =
      List.of(
          Caution.REPORT_ONLY,
          Caution.OPENING_BOXES,
          Caution.MAINS,
          Caution.DRILLING,
          Caution.DIGGING,
          Caution.FIBRE_LIGHT,
          Caution.PRIVACY);

  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Describe describe;
  private final PlanDrawings drawings;
  private final Photographs photographs;

  public LabelMapComposer(Composition composition) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.drawings = new PlanDrawings(job, wording);
    this.photographs = new Photographs(job, wording);
  }

  /** The label map of the whole house. */
  public LabelMapView compose() {
    List<Floor> floors =
        job.floors().stream().sorted(Comparator.comparingInt(Floor::level)).toList();
    return new LabelMapView(
        floors.stream().map(this::floor).flatMap(Optional::stream).toList(),
        floors.stream()
            .flatMap(f -> job.spaces().stream().filter(s -> s.floor().equals(f.id())))
            .map(this::room)
            .flatMap(Optional::stream)
            .toList(),
        job.heads().stream().map(this::head).toList(),
        new Grounds(job, assessments, wording).sheet(),
        Caution.say(CAUTIONS, wording));
  }

  private Optional<FloorSheet> floor(Floor floor) {
    return drawings
        .floor(floor)
        .map(
            plan -> {
              List<SymbolKind> used =
                  plan.marks().stream().map(FloorPlan.FloorMark::symbol).toList();
              return new FloorSheet(
                  floor.name(),
                  plan,
                  used.isEmpty() ? Optional.empty() : Optional.of(drawings.legend(used)));
            });
  }

  private Optional<RoomSheet> room(Space space) {
    List<Place> places = job.placesIn(space);
    List<PhotoView> photos = photographs.of(space);
    if (places.isEmpty() && photos.isEmpty()) {
      return Optional.empty();
    }
    Optional<RoomPlan> plan = drawings.room(space, places);
    Set<SymbolKind> used = new LinkedHashSet<>();
    plan.ifPresent(p -> p.marks().stream().map(Mark::symbol).forEach(used::add));
    List<String> unplaced =
        places.stream()
            .filter(p -> p.at().isEmpty() && (p.wall().isEmpty() || p.offset().isEmpty()))
            .filter(p -> p.ties().isEmpty())
            .map(Place::name)
            .toList();
    return Optional.of(
        new RoomSheet(
            space.name(),
            job.floor(space.floor()).name(),
            plan.map(Drawing.class::cast),
            drawings.elevations(space, places),
            used.isEmpty() ? Optional.empty() : Optional.of(drawings.legend(used)),
            places.stream().map(this::place).toList(),
            unplaced,
            photos));
  }

  private PlaceRow place(Place place) {
    return new PlaceRow(
        place.name(),
        describe.word(place.kind()),
        describe.where(place),
        job.runsAt(place).stream().map(run -> cable(run, place)).toList());
  }

  private CableRow cable(Run run, Place here) {
    RunEnd other = describe.otherEnd(run, here);
    RunEnd near = run.otherThan(other);
    return cable(run, near, other);
  }

  private CableRow cable(Run run, RunEnd near, RunEnd other) {
    return new CableRow(
        run.label(),
        describe.cable(run),
        near.jack().orElse("—"),
        describe.end(other),
        describe.state(run),
        describe.tested(run));
  }

  private HeadSheet head(Head head) {
    List<PanelSheet> panels = head.panels().stream().map(p -> panel(head, p)).toList();
    List<CableRow> loose =
        PanelRuns.loose(job, head).stream()
            .map(end -> cable(end.run(), end.near(), end.other()))
            .toList();
    return new HeadSheet(head.name(), describe.where(head), panels, loose, photographs.of(head));
  }

  private PanelSheet panel(Head head, Panel panel) {
    PanelRuns runs = PanelRuns.of(job, head, panel);
    List<PortRow> rows =
        runs.used().stream()
            .map(
                used ->
                    new PortRow(
                        wording.print(used.port()),
                        used.run().label(),
                        describe.cable(used.run()),
                        describe.end(used.otherEnd()),
                        describe.state(used.run()),
                        describe.tested(used.run())))
            .toList();
    return new PanelSheet(
        panel.name(),
        describe.word(panel.kind()),
        new PanelDrawing(wording).of(head, panel, runs),
        rows);
  }
}
