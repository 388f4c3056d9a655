package wallbook.compose.signoff;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wallbook.compose.Composition;
import wallbook.compose.LabelRanges;
import wallbook.compose.RunState;
import wallbook.compose.signoff.SignOffView.Tick;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.ExceptionItem;
import wallbook.record.Fibre;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Party;
import wallbook.record.PartyRole;
import wallbook.record.Place;
import wallbook.record.ProofMethod;
import wallbook.record.Run;
import wallbook.record.Space;
import wallbook.record.StubOut;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * What is to be ticked before anyone signs. The record is counted where it can tell; nothing is
 * ticked by itself, since only people can see the house.
 */
final class Checklist {
  /** Shown clear to a size; a line drawn or blown through shows only that something thin passes. */
  private static final Set<ProofMethod> PROVING = EnumSet.of(ProofMethod.MANDREL, ProofMethod.SLUG);

  private static final Set<PartyRole> LICENSED =
      EnumSet.of(PartyRole.INTEGRATOR, PartyRole.ELECTRICIAN);

  /** Names that are worth printing; beyond these only how many more. */
  private static final int MOST_NAMES = 12;

  private final Job job;
  private final List<Finding> findings;
  private final Wording wording;

  Checklist(Composition composition) {
    this.job = composition.job();
    this.findings = composition.findings();
    this.wording = composition.wording();
  }

  List<Tick> ticks() {
    List<Tick> ticks = new ArrayList<>();
    List<Run> working =
        job.runs().stream().filter(run -> RunState.of(run) == RunState.WORKS).toList();
    ticks.add(counted("tested", working, run -> !job.testsOf(run).isEmpty(), Run::label));
    List<Run> fibres =
        job.fibres().stream()
            .map(fibre -> job.run(fibre.run()))
            .filter(run -> RunState.of(run) == RunState.UNFINISHED)
            .toList();
    ticks.add(counted("found", fibres, this::isFindable, Run::label));
    ticks.add(counted("conduits", job.conduits(), Checklist::isProved, Conduit::label));
    ticks.add(
        counted(
            "ties",
            job.stubOuts(),
            stubOut -> job.place(stubOut.place()).ties().size() >= 2,
            this::name));
    ticks.add(counted("cover", job.stubOuts(), stubOut -> stubOut.cover().isPresent(), this::name));
    ticks.add(counted("photos", wiredRooms(), this::hasPhoto, Space::name));
    ticks.add(
        counted("shown", job.systems(), s -> s.demonstrated().isPresent(), HouseSystem::name));
    ticks.add(
        counted("agreed", job.exceptions(), e -> e.agreed().isPresent(), ExceptionItem::what));
    List<Party> licensed =
        job.facts().parties().stream().filter(p -> LICENSED.contains(p.role())).toList();
    ticks.add(counted("licences", licensed, p -> p.licence().isPresent(), Party::name));
    int warnings = (int) findings.stream().filter(f -> f.severity() == Severity.WARNING).count();
    ticks.add(
        new Tick(
            wording.say("signoff.tick.warnings"),
            Optional.of(wording.say(Phrase.counted("report.warnings", warnings))),
            Optional.empty()));
    for (String by : List.of("labels", "codes", "map", "card", "copies", "trades", "seals")) {
      ticks.add(new Tick(wording.say("signoff.tick." + by), Optional.empty(), Optional.empty()));
    }
    return ticks.stream().filter(Checklist::concernsThisHouse).toList();
  }

  /** A count of nothing is no matter for this house. */
  private static boolean concernsThisHouse(Tick tick) {
    return tick.recorded().filter(String::isEmpty).isEmpty();
  }

  private <T> Tick counted(
      String name, List<T> all, Predicate<T> done, Function<T, String> called) {
    List<String> missing = all.stream().filter(done.negate()).map(called).distinct().toList();
    int made = (int) all.stream().filter(done).count();
    String recorded =
        all.isEmpty() ? "" : wording.say(Phrase.of("signoff.of", "count", made, "all", all.size()));
    return new Tick(wording.say("signoff.tick." + name), Optional.of(recorded), names(missing));
  }

  private Optional<String> names(List<String> missing) {
    if (missing.isEmpty()) {
      return Optional.empty();
    }
    String shown =
        LabelRanges.of(missing.subList(0, Math.min(MOST_NAMES, missing.size())), wording);
    int more = missing.size() - MOST_NAMES;
    return Optional.of(
        more > 0 ? shown + " " + wording.say(Phrase.counted("drawing.more-labels", more)) : shown);
  }

  private boolean isFindable(Run run) {
    return job.fibreOf(run).flatMap(Fibre::whereFound).isPresent();
  }

  private static boolean isProved(Conduit conduit) {
    return conduit.condition() == ConduitCondition.CLEAR
        && conduit.proved().filter(proof -> PROVING.contains(proof.by())).isPresent();
  }

  private String name(StubOut stubOut) {
    return job.place(stubOut.place()).name();
  }

  private List<Space> wiredRooms() {
    Set<String> wired = job.places().stream().map(Place::space).collect(Collectors.toSet());
    return job.spaces().stream().filter(space -> wired.contains(space.id())).toList();
  }

  private boolean hasPhoto(Space space) {
    return job.photos().stream()
        .anyMatch(
            photo ->
                photo.space().equals(Optional.of(space.id()))
                    || photo
                        .place()
                        .filter(place -> job.place(place).space().equals(space.id()))
                        .isPresent());
  }
}
