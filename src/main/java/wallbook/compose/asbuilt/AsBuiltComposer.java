package wallbook.compose.asbuilt;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.assess.copper.LimitLines;
import wallbook.compose.Caution;
import wallbook.compose.Composition;
import wallbook.compose.ContactView;
import wallbook.compose.Damage;
import wallbook.compose.Describe;
import wallbook.compose.ExceptionText;
import wallbook.compose.FactView;
import wallbook.compose.HouseFigures;
import wallbook.compose.RunState;
import wallbook.compose.asbuilt.AsBuiltView.CableType;
import wallbook.compose.asbuilt.AsBuiltView.DamagedRow;
import wallbook.compose.asbuilt.AsBuiltView.ExceptionRow;
import wallbook.compose.asbuilt.AsBuiltView.HeadSchedule;
import wallbook.compose.asbuilt.AsBuiltView.RevisionRow;
import wallbook.compose.asbuilt.AsBuiltView.RoomSchedule;
import wallbook.compose.asbuilt.AsBuiltView.RunRow;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.figure.OneLineDrawing;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.record.Cable;
import wallbook.record.ExceptionItem;
import wallbook.record.Job;
import wallbook.record.Revision;
import wallbook.record.Run;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the technician's as-built of a whole house. */
public final class AsBuiltComposer {
  private static final List<Caution> CAUTIONS =
      List.of(
          Caution.REPORT_ONLY,
          Caution.OPENING_BOXES,
          Caution.MAINS,
          Caution.SEPARATION,
          Caution.DRILLING,
          Caution.STRUCTURE,
          Caution.OLD_WALLS,
          Caution.ATTICS,
          Caution.ANTENNAS,
          Caution.LIFE_SAFETY,
          Caution.DEAD_CABLE,
          Caution.PRIVACY);

  private final Composition composition;
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final ExceptionText exceptions;
  private final LimitLines lines;

  /**
   * @param tables limits that sweeps are plotted beside
   */
  public AsBuiltComposer(Composition composition, Tables tables) {
    this.composition = composition;
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.exceptions = new ExceptionText(wording);
    this.lines = new LimitLines(tables);
  }

  /** The as-built; sources are numbered in the order in which its parts are set. */
  public AsBuiltView compose() {
    SourceList sources = new SourceList();
    Results results = new Results(wording, sources);
    RunText text = new RunText(job, wording);
    Optional<OneLineDrawing.Drawn> oneLine = new OneLineDrawing(job, wording).draw();
    Capacity capacity = new Capacity(composition, results, text);
    Schedules schedules = new Schedules(job, wording, capacity::code);
    List<RoomSchedule> rooms = schedules.rooms();
    List<HeadSchedule> heads = schedules.heads();
    List<RunRow> loose = schedules.loose();
    ConduitSheets conduits = new ConduitSheets(composition, results, text);
    OpenEnds openEnds = new OpenEnds(job, wording);
    return new AsBuiltView(
        facts(),
        job.facts().jurisdiction(),
        job.facts().codes(),
        job.facts().note(),
        ContactView.of(job, wording, party -> true),
        oneLine.map(OneLineDrawing.Drawn::diagram).map(Drawing.class::cast),
        oneLine
            .map(OneLineDrawing.Drawn::leftOut)
            .filter(count -> count > 0)
            .map(count -> wording.say(Phrase.counted("asbuilt.oneline.left-out", count))),
        rooms,
        loose,
        heads,
        schedules.systems(),
        capacity.view(),
        conduits.conduits(),
        conduits.boxes(),
        new TestResults(composition, lines, results, text).view(),
        damaged(),
        openEnds.places(),
        openEnds.photos(),
        new OutsideEnds(composition, results).all(),
        cables(),
        job.exceptions().stream().map(this::exception).toList(),
        job.facts().history().stream().map(this::revision).toList(),
        schedules.index(),
        Caution.say(CAUTIONS, wording),
        sources.list(wording));
  }

  private List<FactView> facts() {
    HouseFigures figures = new HouseFigures(job, wording, "asbuilt.fact.").area();
    job.facts().handover().ifPresent(day -> figures.add("handover", wording.print(day)));
    return figures
        .count("runs", job.runs().size())
        .runs("works", state -> state == RunState.WORKS)
        .runs("dark", state -> state == RunState.DARK)
        .runs("unfinished", state -> state == RunState.UNFINISHED)
        .runs("dead", RunState::carriesNothing)
        .count("places", job.places().size())
        .count("heads", job.heads().size())
        .count("conduits", job.conduits().size())
        .all();
  }

  private List<DamagedRow> damaged() {
    Damage damage = new Damage(job, wording);
    return job.runs().stream()
        .filter(run -> RunState.of(run).carriesNothing())
        .map(
            run ->
                new DamagedRow(
                    run.label(),
                    describe.cable(run),
                    describe.end(run.from()),
                    describe.end(run.to()),
                    damage.why(run),
                    damage.standsIn(run)))
        .toList();
  }

  private List<CableType> cables() {
    return job.runs().stream()
        .map(job::cableOf)
        .distinct()
        .sorted(Comparator.comparing(Cable::medium).thenComparing(Cable::name))
        .map(this::cable)
        .toList();
  }

  private CableType cable(Cable cable) {
    List<Run> runs = job.runs().stream().filter(r -> r.cable().equals(cable.id())).toList();
    return new CableType(
        cable.name(),
        describe.word(cable.medium()),
        wording.print(runs.size()),
        cable
            .diameter()
            .map(d -> wording.quantities().dimension(d))
            .orElseGet(() -> wording.say("not-recorded")),
        cable.jacket().map(describe::word).orElseGet(() -> wording.say("not-recorded")),
        cable.outdoor().isEmpty()
            ? RunText.NONE
            : cable.outdoor().stream().map(describe::word).collect(Collectors.joining(", ")));
  }

  private ExceptionRow exception(ExceptionItem exception) {
    return new ExceptionRow(
        exception.what(),
        describe.word(exception.kind()),
        exceptions.standsIn(exception),
        exceptions.state(exception),
        exception.note());
  }

  private RevisionRow revision(Revision revision) {
    return new RevisionRow(
        wording.print(revision.revision()),
        wording.print(revision.date()),
        revision.by().orElse(RunText.NONE),
        revision.what());
  }
}
