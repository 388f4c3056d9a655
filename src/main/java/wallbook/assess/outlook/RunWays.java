package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Means.Need;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.SystemKind;
import wallbook.wording.Phrase;

/**
 * Finds the ways over cables in place: one that carries what the first leg of a means needs, and if
 * there is a second leg, another at the same place. A cable in service is shared, which is never
 * better than conditional; one whose medium can't be shared is left alone.
 */
final class RunWays {
  private static final Set<Medium> SHARED = EnumSet.of(Medium.BALANCED_PAIR, Medium.FIBRE);
  private static final Set<SystemKind> RECEPTION =
      EnumSet.of(
          SystemKind.TELEVISION, SystemKind.OFF_AIR, SystemKind.SATELLITE, SystemKind.DEMARCATION);
  private static final Comparator<Leg> BEST_FIRST =
      Comparator.comparing(RunWays::verdict, Verdicts.FIRMEST_FIRST).thenComparing(Leg::effort);

  private final Known known;
  private final Job job;

  RunWays(Known known) {
    this.known = known;
    this.job = known.job();
  }

  /** The ways that a means has at a target, in the order of the record's runs. */
  List<Way> of(Wish wish, Means means, Target target) {
    List<Way> ways = new ArrayList<>();
    for (NearRun near : known.runs(means.reach(), target)) {
      if (!means.onlyAtPlace() || isAtPlace(wish, target, near.end())) {
        way(wish, means, target, near.run(), near.end()).ifPresent(ways::add);
      }
    }
    return ways;
  }

  private Optional<Way> way(Wish wish, Means means, Target target, Run run, RunEnd end) {
    Optional<Leg> first = leg(run, end, means.legs().get(0));
    if (first.isEmpty()) {
      return Optional.empty();
    }
    List<Leg> legs = new ArrayList<>(List.of(first.get()));
    for (Need need : means.legs().subList(1, means.legs().size())) {
      Optional<Leg> beside = beside(run, end, need);
      if (beside.isEmpty()) {
        return Optional.empty();
      }
      legs.add(beside.get());
    }
    List<Phrase> conditions = new ArrayList<>(means.conditions());
    legs.stream().filter(Leg::occupied).map(this::shared).forEach(conditions::add);
    legs.stream().flatMap(leg -> unmarked(leg).stream()).forEach(conditions::add);
    legs.stream().flatMap(leg -> usedUp(leg).stream()).forEach(conditions::add);
    return Optional.of(
        new Way(
            means.name(),
            means.words(),
            means.rank(),
            legs,
            legs.stream().flatMap(this::further).toList(),
            isAtPlace(wish, target, end),
            conditions,
            means.notes()));
  }

  /** The best other cable at the same place for a further need. */
  private Optional<Leg> beside(Run run, RunEnd end, Need need) {
    if (end.place().isEmpty()) {
      return Optional.empty();
    }
    return job.runsAt(job.place(end.place().get())).stream()
        .filter(other -> !other.id().equals(run.id()))
        .flatMap(other -> leg(other, end, need).stream())
        .min(BEST_FIRST);
  }

  /** A run counted on for all services of a need; empty if it can't carry one of them. */
  private Optional<Leg> leg(Run run, RunEnd end, Need need) {
    List<Prospect> prospects = new ArrayList<>();
    for (List<String> alternatives : need.services()) {
      Optional<Prospect> best = firmest(run, alternatives);
      if (best.isEmpty()) {
        return Optional.empty();
      }
      prospects.add(best.get());
    }
    Leg leg = new Leg(run.id(), end.place(), prospects);
    return Optional.of(leg).filter(l -> !l.occupied() || canBeShared(run, prospects.get(0)));
  }

  /** The prospect of the service that a run carries most firmly, of equals the first named. */
  private Optional<Prospect> firmest(Run run, List<String> services) {
    Optional<Prospect> best = Optional.empty();
    for (String service : services) {
      Optional<Prospect> found = known.outlook().find(run.id(), service);
      if (found.isPresent()
          && found.get().verdict() != Verdict.BEYOND
          && (best.isEmpty()
              || Verdicts.FIRMEST_FIRST.compare(found.get().verdict(), best.get().verdict()) < 0)) {
        best = found;
      }
    }
    return best;
  }

  /** Pairs and fibre by equipment at both ends; coax by a splitter, for what it carries already. */
  private boolean canBeShared(Run run, Prospect asked) {
    Medium medium = job.cableOf(run).medium();
    if (medium != Medium.COAX) {
      return SHARED.contains(medium);
    }
    Optional<SystemKind> serves = run.system().map(id -> job.system(id).kind());
    return switch (asked.family()) {
      case RECEPTION -> serves.filter(RECEPTION::contains).isPresent();
      case CELLULAR -> serves.filter(SystemKind.CELLULAR_REPEATER::equals).isPresent();
      default -> false;
    };
  }

  private Phrase shared(Leg leg) {
    Run run = job.run(leg.subject());
    return run.serves()
        .map(
            serves -> Phrase.of("outlook.condition.shared", "label", run.label(), "serves", serves))
        .orElseGet(() -> Phrase.of("outlook.condition.shared-unsaid", "label", run.label()));
  }

  /** How much further a line that is to be laid on can go, in each gauge. */
  private Stream<Figure> further(Leg leg) {
    return extension(leg)
        .filter(Prospect::equipmentDecides)
        .map(p -> new Figure(p.name(), p.decisive()));
  }

  /** A line that has used up what it may lose serves only where it comes out. */
  private Optional<Phrase> usedUp(Leg leg) {
    return extension(leg)
        .flatMap(p -> p.blocker().stream())
        .findFirst()
        .map(
            why ->
                Phrase.of(
                    "outlook.condition.no-further",
                    "label",
                    job.run(leg.subject()).label(),
                    "why",
                    why));
  }

  private Stream<Prospect> extension(Leg leg) {
    return leg.effort() == Effort.EXTEND_LINE
        ? known.outlook().of(leg.subject()).stream()
            .filter(prospect -> prospect.family() == ServiceFamily.EXTENSION)
        : Stream.empty();
  }

  /** A cable that lacks a mark its surroundings ask for is not relied on as it is. */
  private Optional<Phrase> unmarked(Leg leg) {
    return known
        .lackingMark(leg.subject())
        .map(
            a ->
                Phrase.of(
                    "outlook.condition.unmarked",
                    "label",
                    job.run(leg.subject()).label(),
                    "why",
                    a.limitedBy().orElseThrow()));
  }

  private boolean isAtPlace(Wish wish, Target target, RunEnd end) {
    if (target instanceof Target.AtPlace at) {
      return end.place().equals(Optional.of(at.place()));
    }
    return target instanceof Target.House
        || end.place().map(id -> job.place(id).use()).filter(wish.uses()::contains).isPresent();
  }

  private static Verdict verdict(Leg leg) {
    return leg.prospects().stream().map(Prospect::verdict).reduce(Verdicts::weaker).orElseThrow();
  }
}
