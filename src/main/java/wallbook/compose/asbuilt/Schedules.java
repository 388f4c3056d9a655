package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallbook.compose.Describe;
import wallbook.compose.asbuilt.AsBuiltView.HeadSchedule;
import wallbook.compose.asbuilt.AsBuiltView.IndexEntry;
import wallbook.compose.asbuilt.AsBuiltView.PanelSchedule;
import wallbook.compose.asbuilt.AsBuiltView.PlaceRows;
import wallbook.compose.asbuilt.AsBuiltView.PortRow;
import wallbook.compose.asbuilt.AsBuiltView.RoomSchedule;
import wallbook.compose.asbuilt.AsBuiltView.RunRow;
import wallbook.compose.asbuilt.AsBuiltView.SystemRow;
import wallbook.compose.asbuilt.AsBuiltView.SystemSchedule;
import wallbook.compose.figure.PanelDrawing;
import wallbook.compose.figure.PanelRuns;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.Space;
import wallbook.wording.Wording;

/** The runs of a house by room, by head and by system. Rooms come first: they take the anchors. */
final class Schedules {
  private static final int INDEX_COLUMNS = 6;

  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final RunText text;
  private final Function<Run, Optional<String>> capacity;
  private final Anchors anchors = new Anchors();

  /**
   * @param capacity code of what a run may carry
   */
  Schedules(Job job, Wording wording, Function<Run, Optional<String>> capacity) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.text = new RunText(job, wording);
    this.capacity = capacity;
  }

  List<RoomSchedule> rooms() {
    return job.spaces().stream()
        .sorted(Comparator.comparingInt(s -> job.floor(s.floor()).level()))
        .map(this::room)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Runs that no room shows. */
  List<RunRow> loose() {
    return job.runs().stream()
        .filter(run -> !anchors.has(run))
        .map(run -> row(run, run.from(), run.to()))
        .toList();
  }

  List<HeadSchedule> heads() {
    return job.heads().stream().map(this::head).toList();
  }

  /** Systems in the order of the record, then the runs that belong to none. */
  List<SystemSchedule> systems() {
    List<SystemSchedule> systems = new ArrayList<>();
    for (HouseSystem system : job.systems()) {
      systems.add(
          new SystemSchedule(
              system.name(), system.works(), system.later(), runsOf(Optional.of(system.id()))));
    }
    List<SystemRow> others = runsOf(Optional.empty());
    if (!others.isEmpty()) {
      systems.add(
          new SystemSchedule(
              wording.say("asbuilt.systems.none"), Optional.empty(), Optional.empty(), others));
    }
    return systems;
  }

  /** Every label in order, some to a row; blanks fill the last. */
  List<List<IndexEntry>> index() {
    List<IndexEntry> entries = new ArrayList<>();
    job.runs().stream()
        .sorted(Comparator.comparing(Run::label))
        .forEach(run -> entries.add(new IndexEntry(run.label(), Optional.of(Anchors.of(run)))));
    List<List<IndexEntry>> rows = new ArrayList<>();
    while (entries.size() % INDEX_COLUMNS != 0) {
      entries.add(new IndexEntry("", Optional.empty()));
    }
    for (int i = 0; i < entries.size(); i += INDEX_COLUMNS) {
      rows.add(List.copyOf(entries.subList(i, i + INDEX_COLUMNS)));
    }
    return rows;
  }

  private Optional<RoomSchedule> room(Space space) {
    List<PlaceRows> places =
        job.places().stream()
            .filter(place -> place.space().equals(space.id()))
            .map(this::place)
            .toList();
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new RoomSchedule(space.name(), job.floor(space.floor()).name(), space.note(), places));
  }

  private PlaceRows place(Place place) {
    return new PlaceRows(
        place.name(),
        place.label(),
        describe.word(place.kind()),
        describe.where(place),
        place.note(),
        job.runsAt(place).stream().map(run -> row(run, place)).toList());
  }

  private RunRow row(Run run, Place here) {
    RunEnd other = describe.otherEnd(run, here);
    return row(run, run.otherThan(other), other);
  }

  private RunRow row(Run run, RunEnd near, RunEnd other) {
    return new RunRow(
        anchors.claim(run),
        run.label(),
        near.jack().orElse(RunText.NONE),
        describe.cable(run),
        describe.shortEnd(other),
        text.length(run),
        text.end(near),
        describe.state(run),
        text.tested(run),
        capacity.apply(run));
  }

  private HeadSchedule head(Head head) {
    List<RunRow> loose =
        PanelRuns.loose(job, head).stream()
            .map(end -> row(end.run(), end.near(), end.other()))
            .toList();
    return new HeadSchedule(
        head.name(),
        describe.where(head),
        head.note(),
        head.panels().stream().map(panel -> panel(head, panel)).toList(),
        loose);
  }

  private PanelSchedule panel(Head head, Panel panel) {
    PanelRuns runs = PanelRuns.of(job, head, panel);
    return new PanelSchedule(
        panel.id(),
        panel.name(),
        describe.word(panel.kind()),
        panel.note(),
        new PanelDrawing(wording).of(head, panel, runs),
        runs.used().stream().map(this::port).toList());
  }

  private PortRow port(PanelRuns.Used used) {
    Run run = used.run();
    RunEnd here = run.otherThan(used.otherEnd());
    return new PortRow(
        wording.print(used.port()),
        run.label(),
        describe.cable(run),
        describe.shortEnd(used.otherEnd()),
        text.plainLength(run),
        text.end(here),
        describe.state(run),
        capacity.apply(run));
  }

  private List<SystemRow> runsOf(Optional<String> system) {
    return job.runs().stream()
        .filter(run -> run.system().equals(system))
        .map(
            run ->
                new SystemRow(
                    run.label(),
                    run.serves().orElse(RunText.NONE),
                    describe.cable(run),
                    describe.shortEnd(run.from()),
                    describe.shortEnd(run.to()),
                    describe.state(run)))
        .toList();
  }
}
