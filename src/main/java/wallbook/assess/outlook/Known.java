package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.assess.Assessments;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;

/**
 * What is known of a house when wishes are asked for, with what lies in each space at hand: a
 * question for one room then does not look through the whole house.
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

  /** Runs with an end that a means may begin at, in the order of the record. */
  List<Run> runs(Means.Reach reach, Target target) {
    return reach == Means.Reach.ENTRANCE ? runsAtEntrance : in(runsBySpace, target);
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
