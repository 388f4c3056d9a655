package wallbook.assess.speaker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.wire.Wire;
import wallbook.assess.wire.WireUse;
import wallbook.assess.wire.Wires;
import wallbook.quantity.Resistance;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.Speaker;
import wallbook.record.Zone;
import wallbook.reference.Row;
import wallbook.wording.Phrase;

/**
 * Finds the ways that sound takes through the wire of a house. One way a run and variant: where
 * several lines share a run, the one with the largest share of its load in the wire stands for all.
 */
final class SpeakerPaths {
  private final Wires wires;
  private final SpeakerPractice practice;

  SpeakerPaths(Wires wires, SpeakerPractice practice) {
    this.wires = wires;
    this.practice = practice;
  }

  /** The speakers of a zone by the run that feeds each, in the order of the record. */
  Map<Run, List<Speaker>> speakersByRun(Job job, Zone zone) {
    Map<Run, List<Speaker>> byRun = new LinkedHashMap<>();
    for (Speaker speaker : zone.speakers()) {
      runOf(job, zone, speaker)
          .ifPresent(run -> byRun.computeIfAbsent(run, r -> new ArrayList<>()).add(speaker));
    }
    return byRun;
  }

  /** Ways of every zone, of usable runs, whether or not the record has what a figure takes. */
  List<SpeakerPath> ofZones(Job job) {
    Map<String, SpeakerPath> worst = new LinkedHashMap<>();
    for (Zone zone : job.zones()) {
      speakersByRun(job, zone)
          .forEach(
              (run, speakers) -> {
                if (Wires.unusable(run).isEmpty()) {
                  for (SpeakerPath path : overRun(job, zone, run, speakers)) {
                    worst.merge(path.subject(), path, SpeakerPaths::worse);
                  }
                }
              });
    }
    return withDoubled(worst.values());
  }

  /** Ways over a run that no zone of the record uses, at each nominal load. */
  List<SpeakerPath> unused(Job job, Run run) {
    Wire wire = wires.of(job, run);
    List<SpeakerPath> paths = new ArrayList<>();
    for (Row row : practice.nominalLoads()) {
      Resistance load = Resistance.ohms(row.number("load_ohm"));
      paths.add(
          new SpeakerPath(
              "." + row.text("load"),
              wire,
              1,
              2,
              Optional.of(load),
              Phrase.of("speaker.load.nominal", "load", load),
              Resistance.ohms(0),
              Optional.empty(),
              List.of(Phrase.of("speaker.assume.no-speaker", "load", load)),
              List.of(),
              List.of()));
    }
    return withDoubled(paths);
  }

  private static List<SpeakerPath> withDoubled(Iterable<SpeakerPath> paths) {
    List<SpeakerPath> all = new ArrayList<>();
    for (SpeakerPath path : paths) {
      all.add(path);
      path.doubled().ifPresent(all::add);
    }
    return all;
  }

  /**
   * The run a speaker names, else the only speaker wire at its place, else the only one that is
   * coiled at a stub-out for its zone.
   */
  private static Optional<Run> runOf(Job job, Zone zone, Speaker speaker) {
    if (speaker.run().isPresent()) {
      return speaker.run().map(job::run);
    }
    Optional<Run> atPlace =
        speaker.place().flatMap(place -> only(job, job.runsAt(job.place(place)).stream()));
    return atPlace.or(
        () ->
            only(
                job,
                job.stubOuts().stream()
                    .filter(stubOut -> stubOut.zone().filter(zone.id()::equals).isPresent())
                    .flatMap(stubOut -> stubOut.coiled().stream())
                    .map(coil -> job.run(coil.run()))
                    .distinct()));
  }

  private static Optional<Run> only(Job job, Stream<Run> runs) {
    List<Run> candidates = runs.filter(run -> WireUse.forSpeakers(job, run)).toList();
    return candidates.size() == 1 ? Optional.of(candidates.get(0)) : Optional.empty();
  }

  private List<SpeakerPath> overRun(Job job, Zone zone, Run run, List<Speaker> speakers) {
    Wire wire = wires.of(job, run);
    SpeakerPath path = new ZoneLoads(zone).over(wire, speakers);
    Optional<String> control = zone.volumeControl().filter(place -> endsAt(run, place));
    if (control.isEmpty()) {
      return List.of(path);
    }
    String name = job.place(control.get()).name();
    Optional<Wire> upstream = upstream(job, run, control.get());
    List<Phrase> assumptions = new ArrayList<>(path.assumptions());
    Phrase atFull = Phrase.of("speaker.assume.volume-control", "place", name);
    assumptions.add(atFull);
    List<Phrase> missing = new ArrayList<>(path.missing());
    if (upstream.isEmpty() && !startsAtHead(run)) {
      missing.add(Phrase.of("speaker.missing.upstream", "place", name));
    }
    upstream.ifPresent(wireBefore -> missing.addAll(wireBefore.missing()));
    Resistance before = upstream.flatMap(Wire::pairLoop).orElse(Resistance.ohms(0));
    SpeakerPath whole =
        new SpeakerPath(
            path.variant(),
            wire,
            path.perPole(),
            path.taken(),
            path.load(),
            path.loadSaid(),
            before,
            path.zone(),
            assumptions,
            List.of(atFull),
            missing);
    if (upstream.isEmpty() || !whole.allMissing().isEmpty()) {
      return List.of(whole);
    }
    return List.of(whole, whole.seenFrom(upstream.get(), wire.loop(path.perPole())));
  }

  /** The wire from a head to a volume control; of several the one with the most resistance. */
  private Optional<Wire> upstream(Job job, Run run, String control) {
    return job.runsAt(job.place(control)).stream()
        .filter(other -> !other.id().equals(run.id()) && startsAtHead(other))
        .filter(other -> WireUse.forSpeakers(job, other) && Wires.unusable(other).isEmpty())
        .map(other -> wires.of(job, other))
        .max(
            Comparator.comparingDouble(
                wire -> wire.pairLoop().map(Resistance::inOhms).orElse(0.0)));
  }

  private static boolean endsAt(Run run, String place) {
    return run.from().place().filter(place::equals).isPresent()
        || run.to().place().filter(place::equals).isPresent();
  }

  private static boolean startsAtHead(Run run) {
    return run.from().head().isPresent() || run.to().head().isPresent();
  }

  private static SpeakerPath worse(SpeakerPath a, SpeakerPath b) {
    if (!a.allMissing().isEmpty() || !b.allMissing().isEmpty()) {
      return a.allMissing().isEmpty() ? b : a;
    }
    return b.line().shareOfLoad().compareTo(a.line().shareOfLoad()) > 0 ? b : a;
  }
}
