package wallbook.assess.speaker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Factor;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.record.Run;
import wallbook.record.Speaker;
import wallbook.record.Zone;
import wallbook.wording.Phrase;

/** Assesses what a zone asks of its amplifier and its volume control, whatever its wire. */
final class ZoneAssessor {
  private final SpeakerPractice practice;

  ZoneAssessor(SpeakerPractice practice) {
    this.practice = practice;
  }

  /**
   * @param byRun the zone's speakers by the run that feeds them, as far as the record tells
   */
  List<Assessment> assess(Zone zone, Map<Run, List<Speaker>> byRun) {
    List<Assessment> all = new ArrayList<>();
    if (zone.speakers().isEmpty()) {
      return all;
    }
    long fed = byRun.values().stream().mapToLong(List::size).sum();
    if (fed < zone.speakers().size()) {
      all.add(
          Assessment.of(zone.id(), "speaker.loss", Phrase.of("speaker.asked.zone"))
              .notStated(
                  List.of(
                      Phrase.counted("speaker.missing.run", (int) (zone.speakers().size() - fed))),
                  practice.limits().get(0).source()));
    }
    if (ZoneLoads.line(zone).isPresent()) {
      all.add(taps(zone));
    } else {
      lowestImpedance(zone)
          .ifPresent(
              lowest -> {
                all.add(most(zone, lowest));
                if (zone.volumeControl().isPresent()) {
                  all.add(setting(zone));
                }
              });
    }
    return all;
  }

  /** Least rating of the amplifier of a constant-voltage line. */
  private Assessment taps(Zone zone) {
    Assessment.Builder builder =
        Assessment.of(zone.id(), "speaker.taps", Phrase.of("speaker.asked.taps"));
    Optional<Power> taps = ZoneLoads.taps(zone.speakers());
    if (taps.isEmpty()) {
      return builder.notStated(List.of(Phrase.of("speaker.missing.taps")), practice.tapsSource());
    }
    return builder
        .value(taps.get().times(1 / practice.tapsOfAmplifier().inFraction()))
        .limitedBy(
            Phrase.of(
                "speaker.limit.taps", "taps", taps.get(), "share", practice.tapsOfAmplifier()))
        .verdict(Verdict.INFORMATION, practice.tapsSource());
  }

  private static Optional<Resistance> lowestImpedance(Zone zone) {
    return zone.speakers().stream()
        .map(Speaker::impedance)
        .min(Comparator.naturalOrder())
        .filter(z -> z.inOhms() > 0);
  }

  /** How many such speakers one channel of the amplifier takes side by side. */
  private Assessment most(Zone zone, Resistance lowest) {
    Resistance least = practice.leastLoad(zone);
    return Assessment.of(
            zone.id(), "speaker.channel.most", Phrase.of("speaker.asked.most", "impedance", lowest))
        .value(Count.of((int) Math.floor(lowest.ratioTo(least) + 1e-9)))
        .limitedBy(Phrase.of("speaker.limit.channel", "least", least))
        .verdict(Verdict.INFORMATION, practice.leastLoadSource(zone));
  }

  /**
   * Setting of an impedance-matching volume control: least load of the amplifier over the load of
   * the speakers side by side, the next setting above.
   */
  private Assessment setting(Zone zone) {
    Resistance load =
        zone.speakers().stream().map(ZoneLoads::load).min(Comparator.naturalOrder()).orElseThrow();
    Resistance least = practice.leastLoad(zone);
    double wanted = least.ratioTo(load);
    List<Double> settings = practice.volumeControlSettings();
    OptionalDouble setting =
        settings.stream().mapToDouble(s -> s).filter(s -> s >= wanted - 1e-9).findFirst();
    Assessment.Builder builder =
        Assessment.of(
                zone.id(), "speaker.volume-control", Phrase.of("speaker.asked.volume-control"))
            .limitedBy(Phrase.of("speaker.limit.matching", "load", load, "least", least))
            .assuming(Phrase.of("speaker.assume.alone"));
    if (setting.isEmpty()) {
      Factor largest = Factor.of(settings.get(settings.size() - 1));
      return builder
          .value(Factor.of(wanted))
          .limit(largest, largest.minus(Factor.of(wanted)))
          .verdict(Verdict.BEYOND, practice.volumeControlSource());
    }
    return builder
        .value(Factor.of(setting.getAsDouble()))
        .verdict(Verdict.INFORMATION, practice.volumeControlSource());
  }
}
