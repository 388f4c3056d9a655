package wallbook.compose.security;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wallbook.compose.Caution;
import wallbook.compose.Composition;
import wallbook.compose.ContactView;
import wallbook.compose.Describe;
import wallbook.compose.Discretion;
import wallbook.compose.ExceptionText;
import wallbook.compose.FactView;
import wallbook.compose.RunState;
import wallbook.compose.figure.PanelRuns;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.compose.security.AnnexView.Kind;
import wallbook.compose.security.AnnexView.PanelLines;
import wallbook.compose.security.AnnexView.Port;
import wallbook.compose.security.AnnexView.Replaced;
import wallbook.compose.security.AnnexView.SystemLines;
import wallbook.record.ExceptionItem;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.PartyRole;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the owner's security annex. */
public final class AnnexComposer {
  private static final List<Caution> CAUTIONS =
      List.of(
          Caution.PRIVACY,
          Caution.LIFE_SAFETY,
          Caution.OPENING_BOXES,
          Caution.CLASS_2,
          Caution.POE,
          Caution.DRILLING);

  private final Composition composition;
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final ExceptionText exceptions;
  private final Discretion discretion;
  private final Tables tables;

  /**
   * @param tables of the ties by which places outdoors are found
   */
  public AnnexComposer(Composition composition, Tables tables) {
    this.composition = composition;
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.exceptions = new ExceptionText(wording);
    this.discretion = new Discretion(job, wording);
    this.tables = tables;
  }

  /** The annex; its tables are empty for a house that nothing watches. */
  public AnnexView compose() {
    SourceList sources = new SourceList();
    Devices devices = new Devices(composition, discretion, new Results(wording, sources));
    List<Kind> kinds = devices.kinds();
    return new AnnexView(
        figures(devices),
        job.systems().stream().filter(Discretion::isPrivate).map(this::system).toList(),
        new DevicePlans(job, wording, tables).of(devices.numbers()),
        kinds,
        panels(devices),
        job.exceptions().stream().filter(discretion::isPrivate).map(this::replaced).toList(),
        blindSides(),
        ContactView.of(
            job,
            wording,
            party ->
                party.role() == PartyRole.INTEGRATOR
                    || !party.note().map(discretion::isTellable).orElse(true)),
        Caution.say(CAUTIONS, wording),
        devices.assumed(),
        sources.list(wording));
  }

  /** How many of each kind, and how many of those have a cable that works. */
  private List<FactView> figures(Devices devices) {
    Map<PlaceUse, Integer> all = new EnumMap<>(PlaceUse.class);
    Map<PlaceUse, Integer> wired = new EnumMap<>(PlaceUse.class);
    for (Place place : devices.numbers().keySet()) {
      all.merge(place.use(), 1, Integer::sum);
      boolean works =
          job.runsAt(place).stream().anyMatch(run -> RunState.of(run) == RunState.WORKS);
      wired.merge(place.use(), works ? 1 : 0, Integer::sum);
    }
    List<FactView> figures = new ArrayList<>();
    all.forEach(
        (use, count) ->
            figures.add(
                new FactView(
                    describe.word(use),
                    wording.say(
                        Phrase.of("annex.figure", "count", count, "wired", wired.get(use))))));
    return figures;
  }

  private SystemLines system(HouseSystem system) {
    return new SystemLines(
        system.name(),
        system.works(),
        system.later(),
        system
            .demonstrated()
            .map(day -> wording.say(Phrase.of("manual.demonstrated", "date", day))),
        system.note());
  }

  private List<PanelLines> panels(Devices devices) {
    List<PanelLines> panels = new ArrayList<>();
    for (Head head : job.heads()) {
      if (discretion.isPrivate(head)) {
        panels.add(
            new PanelLines(head.name(), describe.where(head), head.note(), ports(head, devices)));
      }
    }
    return panels;
  }

  private List<Port> ports(Head head, Devices devices) {
    List<Port> ports = new ArrayList<>();
    for (Panel panel : head.panels()) {
      for (PanelRuns.Used used : PanelRuns.of(job, head, panel).used()) {
        Run run = used.run();
        ports.add(
            new Port(
                panel.id(),
                wording.print(used.port()),
                run.label(),
                devices.nameAt(run).orElseGet(() -> describe.end(used.otherEnd()))));
      }
    }
    return ports;
  }

  private Replaced replaced(ExceptionItem exception) {
    return new Replaced(
        exception.what(),
        describe.word(exception.kind()),
        exceptions.standsIn(exception),
        exceptions.state(exception),
        exception.note());
  }

  /** Notes on cameras; the record has no other field for what they don't see. */
  private List<String> blindSides() {
    return job.places().stream()
        .filter(place -> place.use() == PlaceUse.CAMERA)
        .flatMap(place -> place.note().map(note -> place.name() + ": " + note).stream())
        .toList();
  }
}
