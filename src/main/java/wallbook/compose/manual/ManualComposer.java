package wallbook.compose.manual;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallbook.compose.Caution;
import wallbook.compose.Composition;
import wallbook.compose.ContactView;
import wallbook.compose.Describe;
import wallbook.compose.FactView;
import wallbook.compose.RunState;
import wallbook.compose.manual.ManualView.CableView;
import wallbook.compose.manual.ManualView.ConduitView;
import wallbook.compose.manual.ManualView.DarkView;
import wallbook.compose.manual.ManualView.DeadView;
import wallbook.compose.manual.ManualView.ExceptionView;
import wallbook.compose.manual.ManualView.HeadView;
import wallbook.compose.manual.ManualView.LabelExample;
import wallbook.compose.manual.ManualView.PlaceView;
import wallbook.compose.manual.ManualView.RoomView;
import wallbook.compose.manual.ManualView.StubOutView;
import wallbook.compose.manual.ManualView.SystemView;
import wallbook.record.Coil;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.ExceptionItem;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.PartyRole;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.Space;
import wallbook.record.StubOut;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the homeowner's manual. */
public final class ManualComposer {
  private static final List<Caution> CAUTIONS =
      List.of(
          Caution.REPORT_ONLY,
          Caution.MAINS,
          Caution.OPENING_BOXES,
          Caution.DRILLING,
          Caution.DIGGING,
          Caution.FIBRE_LIGHT,
          Caution.CLASS_2,
          Caution.ANTENNAS,
          Caution.FIRESTOP,
          Caution.LIFE_SAFETY,
          Caution.ATTICS,
          Caution.PRIVACY);

  private final Job job;
  private final Wording wording;
  private final Describe describe;

  public ManualComposer(Composition composition) {
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
  }

  /** The manual of the whole house. */
  public ManualView compose() {
    return new ManualView(
        job.facts().title(),
        job.facts().address(),
        job.facts().handover().map(wording::print),
        wording.print(job.facts().revision()),
        job.facts().jurisdiction(),
        job.facts().codes(),
        facts(),
        job.systems().stream().map(this::system).toList(),
        labelExample(),
        job.heads().stream().map(this::head).toList(),
        rooms(),
        job.runs().stream().filter(r -> RunState.of(r).isDark()).map(this::dark).toList(),
        job.runs().stream().filter(ManualComposer::carriesNothing).map(this::dead).toList(),
        job.exceptions().stream().map(this::exception).toList(),
        job.stubOuts().stream().map(this::stubOut).toList(),
        job.conduits().stream().map(this::conduit).toList(),
        ContactView.of(job, wording, party -> party.role() != PartyRole.OWNER),
        Caution.say(CAUTIONS, wording),
        Glossary.of(job, wording));
  }

  private List<FactView> facts() {
    List<FactView> facts = new ArrayList<>();
    job.facts().houseArea().ifPresent(a -> fact(facts, "area", wording.quantities().floorArea(a)));
    fact(facts, "spaces", wording.print(rooms().size()));
    fact(facts, "runs", wording.print(job.runs().size()));
    fact(facts, "working", count(r -> RunState.of(r) == RunState.WORKS));
    fact(facts, "dark", count(r -> RunState.of(r).isDark()));
    fact(facts, "dead", count(ManualComposer::carriesNothing));
    fact(facts, "conduits", wording.print(job.conduits().size()));
    return facts;
  }

  private void fact(List<FactView> facts, String name, String value) {
    facts.add(new FactView(wording.say("manual.fact." + name), value));
  }

  private String count(Predicate<Run> which) {
    return wording.print((int) job.runs().stream().filter(which).count());
  }

  private static boolean carriesNothing(Run run) {
    return RunState.of(run) == RunState.DEAD || RunState.of(run) == RunState.RETIRED;
  }

  private SystemView system(HouseSystem system) {
    int cables =
        (int) job.runs().stream().filter(r -> r.system().equals(Optional.of(system.id()))).count();
    return new SystemView(
        system.name(),
        system.works(),
        system.later(),
        Optional.of(cables)
            .filter(count -> count > 0)
            .map(count -> wording.say(Phrase.counted("manual.cables", count))),
        system.demonstrated().map(d -> say("manual.demonstrated", "date", d)));
  }

  /** A run that goes from a head to a place and works makes the plainest example. */
  private Optional<LabelExample> labelExample() {
    return job.runs().stream()
        .min(
            Comparator.comparing((Run r) -> RunState.of(r) != RunState.WORKS)
                .thenComparing(r -> r.from().head().isEmpty())
                .thenComparing(r -> r.to().place().isEmpty()))
        .map(
            r ->
                new LabelExample(
                    r.label(), describe.cable(r), describe.end(r.from()), describe.end(r.to())));
  }

  private HeadView head(Head head) {
    Space space = job.space(head.space());
    String where =
        head.wall()
            .map(letter -> space.name() + ", " + describe.wall(space, letter))
            .orElse(space.name());
    return new HeadView(
        head.name(),
        describe.word(head.kind()),
        where,
        wording.say(Phrase.counted("manual.cables", job.runsAt(head).size())));
  }

  private List<RoomView> rooms() {
    return job.spaces().stream()
        .sorted(Comparator.comparingInt(s -> job.floor(s.floor()).level()))
        .map(this::room)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Nothing is said of what isn't there. */
  private String summary(int places, int working, int waiting) {
    List<String> cables = new ArrayList<>();
    if (working > 0) {
      cables.add(wording.say(Phrase.counted("manual.working", working)));
    }
    if (waiting > 0) {
      String key = working > 0 ? "manual.waiting" : "manual.only-waiting";
      cables.add(wording.say(Phrase.counted(key, waiting)));
    }
    Phrase counted = Phrase.counted("manual.places", places);
    return cables.isEmpty()
        ? say("manual.room-summary-none", "places", counted)
        : say("manual.room-summary", "places", counted, "cables", String.join(", ", cables));
  }

  private Optional<RoomView> room(Space space) {
    List<Place> places = job.placesIn(space);
    if (places.isEmpty()) {
      return Optional.empty();
    }
    List<Run> runs = places.stream().flatMap(p -> job.runsAt(p).stream()).distinct().toList();
    int working = (int) runs.stream().filter(r -> RunState.of(r) == RunState.WORKS).count();
    int waiting = (int) runs.stream().filter(r -> RunState.of(r).isDark()).count();
    return Optional.of(
        new RoomView(
            space.name(),
            job.floor(space.floor()).name(),
            summary(places.size(), working, waiting),
            places.stream().map(this::place).toList(),
            space.note()));
  }

  private PlaceView place(Place place) {
    return new PlaceView(
        place.name(),
        describe.word(place.kind()),
        describe.where(place),
        place.label(),
        place.note(),
        job.runsAt(place).stream().map(run -> cable(run, place)).toList());
  }

  private CableView cable(Run run, Place here) {
    return new CableView(
        run.label(),
        describe.cable(run),
        describe.end(describe.otherEnd(run, here)),
        describe.state(run),
        describe.tested(run));
  }

  private DarkView dark(Run run) {
    return new DarkView(
        run.label(),
        describe.cable(run),
        describe.end(run.from()),
        describe.end(run.to()),
        describe.state(run),
        run.darkReason().orElseGet(() -> wording.say("not-recorded")));
  }

  private DeadView dead(Run run) {
    Optional<ExceptionItem> exception =
        job.exceptions().stream().filter(e -> e.run().equals(Optional.of(run.id()))).findFirst();
    String why =
        exception
            .map(ExceptionItem::what)
            .or(() -> job.testsOf(run).stream().flatMap(t -> t.reason().stream()).findFirst())
            .or(run::note)
            .orElseGet(() -> wording.say("not-recorded"));
    String standsIn =
        run.standIn()
            .map(id -> say("manual.stands-in-run", "label", job.run(id).label()))
            .or(() -> exception.flatMap(ExceptionItem::standsIn))
            .orElseGet(() -> wording.say("manual.nothing-stands-in"));
    return new DeadView(
        run.label(),
        describe.cable(run),
        describe.end(run.from()),
        describe.end(run.to()),
        why,
        standsIn);
  }

  private ExceptionView exception(ExceptionItem exception) {
    boolean open = exception.open().orElse(false);
    String state =
        open
            ? wording.say("manual.exception-open")
            : exception
                .agreed()
                .map(d -> say("manual.exception-agreed", "date", d))
                .orElseGet(() -> wording.say("manual.exception-settled"));
    return new ExceptionView(
        exception.what(),
        describe.word(exception.kind()),
        exception.standsIn().orElseGet(() -> wording.say("manual.nothing-stands-in")),
        state);
  }

  private StubOutView stubOut(StubOut stubOut) {
    Place place = job.place(stubOut.place());
    List<String> held = stubOut.coiled().stream().map(this::coil).toList();
    return new StubOutView(
        place.name(),
        describe.where(place),
        stubOut
            .cover()
            .map(c -> wording.quantities().position(c))
            .orElseGet(() -> wording.say("not-recorded")),
        held.isEmpty() ? wording.say("manual.nothing-coiled") : String.join("; ", held),
        stubOut.zone().map(id -> job.zone(id).name()).orElseGet(() -> wording.say("not-recorded")));
  }

  private String coil(Coil coil) {
    return say("manual.coil", "label", job.run(coil.run()).label(), "length", coil.length());
  }

  private ConduitView conduit(Conduit conduit) {
    return new ConduitView(
        conduit.label(),
        conduit.name(),
        describe.end(conduit.from()),
        describe.end(conduit.to()),
        conduit.contents().isEmpty()
            ? wording.say("manual.conduit-empty")
            : wording.say(Phrase.counted("manual.conduit-holds", conduit.contents().size())),
        clear(conduit));
  }

  private String clear(Conduit conduit) {
    if (conduit.condition() == ConduitCondition.CRUSHED
        || conduit.condition() == ConduitCondition.BLOCKED) {
      return say("manual.conduit-unusable", "condition", describe.word(conduit.condition()));
    }
    return conduit
        .proved()
        .map(p -> say("manual.conduit-proved", "date", p.date(), "by", describe.word(p.by())))
        .orElseGet(() -> wording.say("manual.conduit-not-proved"));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
