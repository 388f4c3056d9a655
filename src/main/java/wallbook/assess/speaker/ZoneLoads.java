package wallbook.assess.speaker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.assess.wire.Wire;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;
import wallbook.record.Speaker;
import wallbook.record.Zone;
import wallbook.wording.Phrase;

/** What the speakers that a zone has on one run come to as a load. */
final class ZoneLoads {
  private final Zone zone;

  ZoneLoads(Zone zone) {
    this.zone = zone;
  }

  /** The way over a wire to the speakers on it, without what lies before the wire. */
  SpeakerPath over(Wire wire, List<Speaker> speakers) {
    return line(zone)
        .map(line -> constantVoltage(wire, speakers, line))
        .orElseGet(() -> lowImpedance(wire, speakers));
  }

  /** Voltage of the zone's line, if it is one of constant voltage. */
  static Optional<Voltage> line(Zone zone) {
    return zone.lineVoltage().filter(v -> v.inVolts() > 0);
  }

  private SpeakerPath constantVoltage(Wire wire, List<Speaker> speakers, Voltage line) {
    int perPole = speakers.stream().mapToInt(ZoneLoads::perPole).min().orElse(1);
    Optional<Power> taps = taps(speakers);
    Phrase said =
        taps.map(p -> Phrase.of("speaker.load.line", "voltage", line, "power", p))
            .orElseGet(() -> Phrase.of("speaker.load.line-untapped", "voltage", line));
    return path(
        wire,
        perPole,
        2 * perPole,
        taps.map(p -> SpeakerLoads.onConstantVoltage(line, p)),
        said,
        List.of(),
        taps.isPresent() ? List.of() : List.of(Phrase.of("speaker.missing.taps")));
  }

  /** Sum of the taps, if every speaker has one. */
  static Optional<Power> taps(List<Speaker> speakers) {
    double watts = 0;
    for (Speaker speaker : speakers) {
      if (speaker.power().filter(p -> p.inWatts() > 0).isEmpty()) {
        return Optional.empty();
      }
      watts += speaker.power().get().inWatts() * count(speaker);
    }
    return Optional.of(Power.watts(watts));
  }

  private SpeakerPath lowImpedance(Wire wire, List<Speaker> speakers) {
    if (speakers.stream().anyMatch(s -> s.impedance().inOhms() <= 0)) {
      return path(
          wire,
          1,
          2,
          Optional.empty(),
          Phrase.of("speaker.load.unknown"),
          List.of(),
          List.of(Phrase.of("speaker.missing.impedance")));
    }
    int needed = speakers.stream().mapToInt(s -> 2 * perPole(s)).sum();
    boolean shared = wire.conductors().filter(there -> there < needed).isPresent();
    if (shared) {
      return shared(wire, speakers);
    }
    Speaker worst =
        speakers.stream()
            .min(Comparator.comparingDouble(s -> load(s).inOhms() * perPole(s)))
            .orElseThrow();
    List<Phrase> assumptions = new ArrayList<>();
    if (speakers.size() > 1) {
      assumptions.add(Phrase.of("speaker.assume.worst-of", "count", speakers.size()));
    }
    return path(
        wire,
        perPole(worst),
        needed,
        Optional.of(load(worst)),
        said(count(worst), load(worst)),
        assumptions,
        List.of());
  }

  /** More speakers than pairs: all of them side by side on one. */
  private SpeakerPath shared(Wire wire, List<Speaker> speakers) {
    Resistance load = SpeakerLoads.parallel(speakers.stream().map(ZoneLoads::load).toList());
    int perPole = speakers.stream().mapToInt(ZoneLoads::perPole).min().orElse(1);
    int count = speakers.stream().mapToInt(ZoneLoads::count).sum();
    List<Phrase> missing =
        wire.hasFor(perPole)
            ? List.of()
            : List.of(
                Phrase.of(
                    "wire.missing.conductors",
                    "needed",
                    2 * perPole,
                    "there",
                    wire.conductors().orElseThrow()));
    return path(
        wire,
        perPole,
        2 * perPole,
        Optional.of(load),
        said(count, load),
        speakers.size() > 1
            ? List.of(Phrase.of("speaker.assume.side-by-side", "count", count))
            : List.of(),
        missing);
  }

  private SpeakerPath path(
      Wire wire,
      int perPole,
      int taken,
      Optional<Resistance> load,
      Phrase said,
      List<Phrase> assumptions,
      List<Phrase> missing) {
    return new SpeakerPath(
        "",
        wire,
        perPole,
        taken,
        load,
        said,
        Resistance.ohms(0),
        Optional.of(zone),
        assumptions,
        List.of(),
        missing);
  }

  private static Phrase said(int count, Resistance load) {
    return Phrase.counted("speaker.load.speakers", count, "load", load);
  }

  /** Load of the speakers of one entry, side by side. */
  static Resistance load(Speaker speaker) {
    return speaker.impedance().times(1.0 / count(speaker));
  }

  static int count(Speaker speaker) {
    return Math.max(1, speaker.count().orElse(1));
  }

  static int perPole(Speaker speaker) {
    return Math.max(1, speaker.conductorsInParallel().orElse(1));
  }
}
