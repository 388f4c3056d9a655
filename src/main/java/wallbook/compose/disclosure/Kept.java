package wallbook.compose.disclosure;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.ConduitEnd;
import wallbook.record.Head;
import wallbook.record.HeadKind;
import wallbook.record.Job;
import wallbook.record.PartyRole;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunEnvironment;
import wallbook.record.Space;
import wallbook.record.StubOut;

/** Ids of what an extract holds: one part of a house, and the ends that its cables lead to. */
final class Kept {
  private static final Set<PlaceKind> COVERED =
      EnumSet.of(PlaceKind.BLANK_PLATE, PlaceKind.IN_WALL_COIL);
  private static final Set<PlaceUse> PLUGGED_IN_OR_BONDED =
      EnumSet.of(
          PlaceUse.TELEVISION,
          PlaceUse.PROJECTOR,
          PlaceUse.SUBWOOFER,
          PlaceUse.SATELLITE_ANTENNA,
          PlaceUse.OFF_AIR_ANTENNA,
          PlaceUse.CELLULAR_ANTENNA);

  final Set<String> heads = new HashSet<>();
  final Set<String> places = new HashSet<>();
  final Set<String> runs = new HashSet<>();
  final Set<String> conduits = new HashSet<>();
  final Set<String> stubOuts = new HashSet<>();
  final Set<String> exceptions = new HashSet<>();

  /** Heads that are shown whole; of the others only the panels that a kept run comes home to. */
  final Set<String> wholeHeads = new HashSet<>();

  /** Spaces; what else is kept lies in them. */
  final Set<String> spaces = new HashSet<>();

  private final Job job;

  private Kept(Job job) {
    this.job = job;
  }

  /**
   * What a part holds.
   *
   * @param job the job as the reader may see it
   */
  static Kept of(Job job, Part part) {
    Kept kept = new Kept(job);
    switch (part) {
      case HOUSE -> kept.house();
      case LANDSCAPING -> kept.landscaping();
      case ELECTRICAL -> kept.electrical();
      case ENTRANCE -> kept.entrance();
      case BUILDER -> kept.builder();
    }
    kept.addEnds();
    return kept;
  }

  private void house() {
    job.heads().forEach(this::whole);
    job.places().forEach(place -> places.add(place.id()));
    job.runs().forEach(run -> runs.add(run.id()));
    job.conduits().forEach(conduit -> conduits.add(conduit.id()));
    job.stubOuts().forEach(this::stubOut);
    job.exceptions().forEach(exception -> exceptions.add(exception.id()));
    job.spaces().forEach(space -> spaces.add(space.id()));
  }

  private void landscaping() {
    job.stubOuts().forEach(this::stubOut);
    places(place -> place.kind() == PlaceKind.PULL_BOX && isOutdoor(place.space()));
    job.conduits().stream()
        .filter(c -> isOutside(c.from()) || isOutside(c.to()))
        .forEach(c -> conduits.add(c.id()));
    job.runs().stream()
        .filter(run -> run.environments().contains(RunEnvironment.BURIED))
        .filter(run -> run.conduits().isEmpty())
        .forEach(run -> runs.add(run.id()));
  }

  private void electrical() {
    job.heads().forEach(this::whole);
    places(place -> PLUGGED_IN_OR_BONDED.contains(place.use()));
    job.runs().stream().filter(r -> r.feed().isPresent()).forEach(r -> runs.add(r.id()));
    job.conduits().forEach(conduit -> conduits.add(conduit.id()));
    job.stubOuts().stream()
        .filter(s -> s.lineBy().equals(Optional.of(PartyRole.ELECTRICIAN)))
        .forEach(this::stubOut);
  }

  private void entrance() {
    for (Head head : job.heads()) {
      if (head.kind() == HeadKind.DEMARCATION) {
        whole(head);
        job.runsAt(head).forEach(run -> runs.add(run.id()));
        job.conduits().stream()
            .filter(c -> leadsTo(c.from(), head) || leadsTo(c.to(), head))
            .forEach(c -> conduits.add(c.id()));
      }
    }
    job.runs().stream().filter(this::isSingleMode).forEach(run -> runs.add(run.id()));
  }

  private void builder() {
    places(place -> COVERED.contains(place.kind()));
    job.conduits().stream()
        .filter(
            c ->
                c.firestop().isPresent()
                    || c.condition() != ConduitCondition.CLEAR
                    || c.proved().isEmpty())
        .forEach(c -> conduits.add(c.id()));
    job.exceptions().forEach(exception -> exceptions.add(exception.id()));
    job.spaces().stream().filter(s -> s.note().isPresent()).forEach(s -> spaces.add(s.id()));
  }

  /** A cable without its ends can't be recorded, nor can a thing without the space it is in. */
  private void addEnds() {
    for (Run run : job.runs()) {
      if (runs.contains(run.id())) {
        end(run.from());
        end(run.to());
      }
    }
    for (Conduit conduit : job.conduits()) {
      if (conduits.contains(conduit.id())) {
        end(conduit.from());
        end(conduit.to());
      }
    }
    places.forEach(id -> spaces.add(job.place(id).space()));
    heads.forEach(id -> spaces.add(job.head(id).space()));
  }

  private void end(RunEnd end) {
    end.place().ifPresent(places::add);
    end.head().ifPresent(heads::add);
  }

  private void end(ConduitEnd end) {
    end.place().ifPresent(places::add);
    end.head().ifPresent(heads::add);
    end.space().ifPresent(spaces::add);
  }

  private void whole(Head head) {
    heads.add(head.id());
    wholeHeads.add(head.id());
  }

  private void stubOut(StubOut stubOut) {
    stubOuts.add(stubOut.id());
    places.add(stubOut.place());
    stubOut.coiled().forEach(coil -> runs.add(coil.run()));
  }

  private void places(Predicate<Place> which) {
    job.places().stream().filter(which).forEach(place -> places.add(place.id()));
  }

  private boolean isOutside(ConduitEnd end) {
    return Stream.of(
            end.place().map(id -> job.place(id).space()),
            end.head().map(id -> job.head(id).space()),
            end.space())
        .flatMap(Optional::stream)
        .anyMatch(this::isOutdoor);
  }

  private boolean isOutdoor(String space) {
    Space there = job.space(space);
    return there.kind().isOutdoor();
  }

  private static boolean leadsTo(ConduitEnd end, Head head) {
    return end.head().equals(Optional.of(head.id()));
  }

  private boolean isSingleMode(Run run) {
    return job.cableOf(run).fibreClass().filter(c -> c.isSingleMode()).isPresent();
  }
}
