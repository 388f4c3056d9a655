package wallbook.compose.manual;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.compose.Caution;
import wallbook.compose.Composition;
import wallbook.compose.ContactView;
import wallbook.compose.Damage;
import wallbook.compose.Describe;
import wallbook.compose.ExceptionText;
import wallbook.compose.FactView;
import wallbook.compose.HouseFigures;
import wallbook.compose.RunState;
import wallbook.compose.manual.ManualView.ConduitView;
import wallbook.compose.manual.ManualView.DarkView;
import wallbook.compose.manual.ManualView.DeadView;
import wallbook.compose.manual.ManualView.ExceptionView;
import wallbook.compose.manual.ManualView.HeadView;
import wallbook.compose.manual.ManualView.LabelExample;
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

  private final Composition composition;
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Damage damage;
  private final ExceptionText exceptions;

  public ManualComposer(Composition composition) {
    this.composition = composition;
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.damage = new Damage(job, wording);
    this.exceptions = new ExceptionText(wording);
  }

  /** The manual of the whole house. */
  public ManualView compose() {
    List<RoomView> rooms = new RoomChapters(composition).all();
    return new ManualView(
        job.facts().title(),
        job.facts().address(),
        job.facts().handover().map(wording::print),
        wording.print(job.facts().revision()),
        job.facts().jurisdiction(),
        job.facts().codes(),
        facts(rooms.size()),
        job.systems().stream().map(this::system).toList(),
        labelExample(),
        job.heads().stream().map(this::head).toList(),
        rooms,
        job.runs().stream().filter(r -> RunState.of(r).isDark()).map(this::dark).toList(),
        job.runs().stream().filter(r -> RunState.of(r).carriesNothing()).map(this::dead).toList(),
        job.exceptions().stream().map(this::exception).toList(),
        job.stubOuts().stream().map(this::stubOut).toList(),
        job.conduits().stream().map(this::conduit).toList(),
        ContactView.of(job, wording, party -> party.role() != PartyRole.OWNER),
        Caution.say(CAUTIONS, wording),
        Glossary.of(job, wording));
  }

  private List<FactView> facts(int rooms) {
    return new HouseFigures(job, wording, "manual.fact.")
        .area()
        .count("spaces", rooms)
        .count("runs", job.runs().size())
        .runs("working", state -> state == RunState.WORKS)
        .runs("dark", RunState::isDark)
        .runs("dead", RunState::carriesNothing)
        .count("conduits", job.conduits().size())
        .all();
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
    return new HeadView(
        head.name(),
        describe.word(head.kind()),
        describe.where(head),
        wording.say(Phrase.counted("manual.cables", job.runsAt(head).size())));
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
    return new DeadView(
        run.label(),
        describe.cable(run),
        describe.end(run.from()),
        describe.end(run.to()),
        damage.why(run),
        damage.standsIn(run));
  }

  private ExceptionView exception(ExceptionItem exception) {
    return new ExceptionView(
        exception.what(),
        describe.word(exception.kind()),
        exceptions.standsIn(exception),
        exceptions.state(exception));
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
