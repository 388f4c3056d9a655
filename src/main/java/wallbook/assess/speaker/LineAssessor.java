package wallbook.assess.speaker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Factor;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Quantity;
import wallbook.quantity.Resistance;
import wallbook.record.Zone;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/** Assesses one way from an amplifier to its load. */
final class LineAssessor {
  private final SpeakerPractice practice;

  LineAssessor(SpeakerPractice practice) {
    this.practice = practice;
  }

  /** Everything that is to be said of a way. */
  List<Assessment> assess(SpeakerPath path) {
    List<Phrase> missing = path.allMissing();
    List<Assessment> all = new ArrayList<>();
    if (missing.isEmpty()) {
      for (LossLimit limit : practice.limits()) {
        all.add(loss(path, limit));
        longest(path, limit).ifPresent(all::add);
      }
      all.add(
          begin(path, "loop", Phrase.of("speaker.asked.loop", "load", path.loadSaid()))
              .value(path.line().loop())
              .verdict(Verdict.INFORMATION, path.wire().source()));
      all.add(
          begin(path, "power-lost", Phrase.of("speaker.asked.power-lost", "load", path.loadSaid()))
              .value(path.line().powerLost())
              .verdict(Verdict.INFORMATION, path.wire().source()));
      damping(path).ifPresent(all::add);
    } else {
      all.add(
          begin(path, "loss", Phrase.of("speaker.asked.loss", "load", path.loadSaid()))
              .notStated(missing, path.wire().source()));
    }
    amplifierLoad(path).ifPresent(all::add);
    return all;
  }

  private Assessment loss(SpeakerPath path, LossLimit limit) {
    SpeakerLine line = path.line();
    boolean within = line.loop().compareTo(limit.largestLoop(line.load())) <= 0;
    return begin(
            path,
            limit.question() + "." + limit.name(),
            "asked." + limit.question() + ".limit",
            limit.permitted())
        .value(limit.of(line))
        .limit(limit.permitted(), limit.left(line))
        .limitedBy(wireAgainstLoad(path))
        .verdict(verdict(path, within), limit.source().and(path.wire().source()));
  }

  private Optional<Assessment> longest(SpeakerPath path, LossLimit limit) {
    Optional<LinearResistance> pole = path.wire().ofPole(path.perPole());
    if (pole.isEmpty()) {
      return Optional.empty();
    }
    Resistance left = limit.largestLoop(path.line().load()).minus(path.rest());
    Length longest = SpeakerLine.longest(left, pole.get());
    if (longest.inMetres() < 0) {
      longest = Length.metres(0);
    }
    Length run = path.wire().length().orElseThrow();
    Length further = longest.minus(run);
    return Optional.of(
        begin(
                path,
                "longest." + limit.name(),
                "asked.longest." + limit.question(),
                limit.permitted())
            .value(run)
            .limit(longest, further)
            .limitedBy(wireAgainstLoad(path))
            .verdict(
                verdict(path, further.inMetres() >= 0), limit.source().and(path.wire().source())));
  }

  /** The load against what the amplifier takes; wire resistance is no licence for a lower load. */
  private Optional<Assessment> amplifierLoad(SpeakerPath path) {
    Optional<Zone> zone = path.zone().filter(z -> ZoneLoads.line(z).isEmpty());
    if (zone.isEmpty() || path.load().isEmpty() || !path.variant().isEmpty()) {
      return Optional.empty();
    }
    Resistance load = path.load().get();
    Resistance least = practice.leastLoad(zone.get());
    Assessment.Builder builder =
        Assessment.of(path.subject(), "speaker.load", Phrase.of("speaker.asked.load"))
            .value(load)
            .limit(least, load.minus(least))
            .limitedBy(Phrase.of("speaker.limit.amplifier", "load", path.loadSaid()))
            .assuming(Phrase.of("speaker.assume.own-channel"));
    if (practice.stated(zone.get()).isEmpty()) {
      builder.assuming(Phrase.of("speaker.assume.amplifier", "least", least));
    }
    return Optional.of(
        builder.verdict(
            load.compareTo(least) >= 0 ? Verdict.WITHIN : Verdict.BEYOND,
            practice.leastLoadSource(zone.get())));
  }

  private Optional<Assessment> damping(SpeakerPath path) {
    Optional<Zone> zone = path.zone().filter(z -> ZoneLoads.line(z).isEmpty());
    if (zone.isEmpty()) {
      return Optional.empty();
    }
    boolean judged = practice.judgesDamping(zone.get().kind());
    Optional<Double> amplifier = zone.get().amplifierDamping().filter(df -> df > 0);
    Factor least = practice.leastDamping();
    Source source = practice.dampingSource().and(path.wire().source());
    Resistance output =
        amplifier.map(df -> practice.dampingReference().times(1 / df)).orElse(Resistance.ohms(0));
    Factor damping = path.line().damping(output);
    boolean enough = damping.compareTo(least) >= 0;
    Assessment.Builder builder =
        begin(path, "damping", Phrase.of("speaker.asked.damping", "load", path.loadSaid()));
    if (amplifier.isPresent()) {
      builder.assuming(
          Phrase.of("speaker.assume.damping", "reference", practice.dampingReference()));
      builder.value(damping);
      if (!judged) {
        return Optional.of(builder.verdict(Verdict.INFORMATION, source));
      }
    } else if (!judged) {
      return Optional.empty();
    } else if (enough) {
      return Optional.of(builder.notStated(List.of(Phrase.of("speaker.missing.damping")), source));
    } else {
      builder.value(damping).assuming(Phrase.of("speaker.assume.wire-alone"));
    }
    return Optional.of(
        builder
            .limit(least, damping.minus(least))
            .limitedBy(wireAgainstLoad(path))
            .verdict(verdict(path, enough), source));
  }

  private Assessment.Builder begin(
      SpeakerPath path, String question, String asked, Quantity limit) {
    return begin(
        path, question, Phrase.of("speaker." + asked, "load", path.loadSaid(), "limit", limit));
  }

  private Assessment.Builder begin(SpeakerPath path, String question, Phrase asked) {
    Assessment.Builder builder =
        Assessment.of(path.subject(), "speaker." + question + path.variant(), asked);
    path.wire().assumptions().forEach(builder::assuming);
    path.assumptions().forEach(builder::assuming);
    builder.hangingOn(path.wire().conditions()).hangingOn(path.conditions());
    Length rules = practice.resistanceRulesTo();
    boolean lowImpedance = path.zone().flatMap(ZoneLoads::line).isEmpty();
    if (lowImpedance && path.wire().length().filter(l -> l.compareTo(rules) > 0).isPresent()) {
      builder.assuming(Phrase.of("speaker.assume.inductance", "length", rules));
    }
    return builder;
  }

  private static Phrase wireAgainstLoad(SpeakerPath path) {
    return Phrase.of("speaker.limit.wire", "loop", path.line().loop(), "load", path.loadSaid());
  }

  private static Verdict verdict(SpeakerPath path, boolean within) {
    if (!within) {
      return Verdict.BEYOND;
    }
    return path.firm() ? Verdict.WITHIN : Verdict.CONDITIONAL;
  }
}
