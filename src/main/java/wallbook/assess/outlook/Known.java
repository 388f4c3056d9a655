package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;

/**
 * What is known of a house when wishes are asked for, with what lies in each space at hand: a
 * question for one room then does not look through the whole house. Several threads may ask.
 */
final class Known {
  private final Job job;
  private final Assessments assessments;
  private final Outlook outlook;
  private final Map<String, List<Run>> runsBySpace = new HashMap<>();
  private final List<Run> runsAtEntrance = new ArrayList<>();
  private final Map<String, List<Conduit>> conduitsBySpace = new HashMap<>();
  private final List<Conduit> conduitsAtEntrance = new ArrayList<>();
  private final Map<String, Set<PlaceUse>> usesBySpace = new HashMap<>();
  private final Set<String> withSound = new HashSet<>();

  /** Of the runs asked about; many ways take the same one. */
  private final Map<String, Optional<Assessment>> lackingMark = new ConcurrentHashMap<>();

  /** Of the targets asked about; many wishes are for one room. */
  private final Map<Target, Map<Means.Reach, List<NearRun>>> nearRuns = new ConcurrentHashMap<>();

  private final List<Phrase> rackFacts;

  Known(Job job, Assessments assessments, Outlook outlook) {
    this.job = job;
    this.assessments = assessments;
    this.outlook = outlook;
    this.rackFacts = RackFacts.of(job);
    job.runs().forEach(this::place);
    job.conduits().forEach(this::place);
    job.places()
        .forEach(
            place ->
                usesBySpace
                    .computeIfAbsent(place.space(), s -> EnumSet.noneOf(PlaceUse.class))
                    .addAll(List.of(place.use())));
    job.zones().forEach(zone -> withSound.addAll(zone.spaces()));
  }

  private void place(Run run) {
    boolean atEntrance = false;
    for (RunEnd end : List.of(run.from(), run.to())) {
      end.place().map(id -> job.place(id).space()).ifPresent(space -> add(runsBySpace, space, run));
      atEntrance |= Entrance.isEntrance(job, end);
    }
    if (atEntrance) {
      runsAtEntrance.add(run);
    }
  }

  private void place(Conduit conduit) {
    boolean atEntrance = false;
    for (ConduitEnd end : List.of(conduit.from(), conduit.to())) {
      add(conduitsBySpace, Target.spaceOf(job, end), conduit);
      atEntrance |= Entrance.isEntrance(job, end.head(), end.place());
    }
    if (atEntrance) {
      conduitsAtEntrance.add(conduit);
    }
  }

  Job job() {
    return job;
  }

  Assessments assessments() {
    return assessments;
  }

  Outlook outlook() {
    return outlook;
  }

  /** Runs that a means may use at a target, in the order of the record. */
  List<NearRun> runs(Means.Reach reach, Target target) {
    return nearRuns
        .computeIfAbsent(target, t -> new ConcurrentHashMap<>())
        .computeIfAbsent(reach, r -> nearRuns(r, target));
  }

  private List<NearRun> nearRuns(Means.Reach reach, Target target) {
    List<NearRun> near = new ArrayList<>();
    for (Run run : reach == Means.Reach.ENTRANCE ? runsAtEntrance : in(runsBySpace, target)) {
      if (isUsable(reach, target, run.from(), run.to())) {
        near.add(new NearRun(run, run.from()));
      } else if (isUsable(reach, target, run.to(), run.from())) {
        near.add(new NearRun(run, run.to()));
      }
    }
    return near;
  }

  private boolean isUsable(Means.Reach reach, Target target, RunEnd near, RunEnd far) {
    return switch (reach) {
      case HEAD -> target.holds(job, near) && Entrance.isHome(job, far.head());
      case ANY -> target.holds(job, near);
      case ENTRANCE -> Entrance.isEntrance(job, near) && Entrance.isHome(job, far.head());
    };
  }

  /** Conduits with an end that a means may begin at, in the order of the record. */
  Stream<Conduit> conduits(Means.Reach reach, Target target) {
    return reach == Means.Reach.ENTRANCE
        ? conduitsAtEntrance.stream()
        : in(conduitsBySpace, target).stream();
  }

  /** What has both ends in one space is in it once. */
  private static <T> void add(Map<String, List<T>> bySpace, String space, T thing) {
    List<T> things = bySpace.computeIfAbsent(space, s -> new ArrayList<>());
    if (things.isEmpty() || things.get(things.size() - 1) != thing) {
      things.add(thing);
    }
  }

  private <T> List<T> in(Map<String, List<T>> bySpace, Target target) {
    return target.spaceIn(job).map(bySpace::get).orElse(List.of());
  }

  /** The assessment of a mark that the surroundings of a run ask for and its cable lacks. */
  Optional<Assessment> lackingMark(String run) {
    return lackingMark.computeIfAbsent(
        run,
        id ->
            assessments.of(id, "outdoor.mark.").stream()
                .filter(a -> a.verdict() == Verdict.BEYOND)
                .findFirst());
  }

  /** What the places of a space are meant for. */
  Set<PlaceUse> usesIn(String space) {
    return usesBySpace.getOrDefault(space, Set.of());
  }

  /** Whether an audio zone covers a space. */
  boolean hasSound(String space) {
    return withSound.contains(space);
  }

  /** What bears on moving a rack. */
  List<Phrase> rackFacts() {
    return rackFacts;
  }
}
