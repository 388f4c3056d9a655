package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.record.LengthMethod;
import wallbook.record.LinkConfiguration;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Judges the single figures of a test: length, delay, skew and loop resistance. */
final class ScalarAssessor {
  private final LengthLimits lengths;
  private final DelayLimits delays;
  private final ResistanceLimits resistances;
  private final Row velocities;

  ScalarAssessor(Tables tables) {
    lengths = new LengthLimits(tables);
    delays = new DelayLimits(tables);
    resistances = new ResistanceLimits(tables);
    velocities = tables.table("pair-velocity").row("four-pair");
  }

  List<Assessment> assess(Run run, RunTest test) {
    LinkConfiguration configuration =
        test.limit().map(l -> l.configuration()).orElse(LinkConfiguration.PERMANENT_LINK);
    List<Assessment> assessments = new ArrayList<>();
    test.length().ifPresent(l -> assessments.add(length(test, configuration, l)));
    agreement(run, test).ifPresent(assessments::add);
    test.delay().ifPresent(d -> assessments.add(delay(test, configuration, d)));
    test.skew().ifPresent(s -> assessments.add(skew(test, configuration, s)));
    test.loopResistance()
        .ifPresent(
            r -> {
              assessments.add(loop(test, configuration, r));
              assessments.add(unbalance(test, configuration, r));
            });
    velocity(run, test).ifPresent(assessments::add);
    return assessments;
  }

  /** Up to the limit it passes; up to a tenth more it may, for the velocity that was set. */
  private Assessment length(RunTest test, LinkConfiguration configuration, Length measured) {
    LengthLimits.Sourced limit = lengths.at20(configuration);
    Length margin = limit.length().minus(measured);
    Length allowance = limit.length().times(lengths.velocityAllowance(configuration).inFraction());
    Assessment.Builder builder =
        measured(test, configuration, "length", measured, limit.length(), margin);
    Verdict verdict = Verdict.WITHIN;
    if (margin.inMetres() < 0) {
      boolean allowed = margin.plus(allowance).inMetres() >= 0;
      verdict = allowed ? Verdict.CONDITIONAL : Verdict.BEYOND;
      builder.onlyIf(
          Phrase.of(
              "pairs.test.velocity-allowance", "share", lengths.velocityAllowance(configuration)));
    }
    return builder.verdict(verdict, limit.source());
  }

  /** Recorded and measured length should agree within what the velocity setting allows. */
  private Optional<Assessment> agreement(Run run, RunTest test) {
    if (run.length().isEmpty()
        || test.length().isEmpty()
        || run.lengthBy().equals(Optional.of(LengthMethod.TESTER))) {
      return Optional.empty();
    }
    Length recorded = run.length().get();
    Length apart = Length.metres(Math.abs(recorded.minus(test.length().get()).inMetres()));
    Length allowed =
        recorded.times(lengths.velocityAllowance(LinkConfiguration.PERMANENT_LINK).inFraction());
    Length margin = allowed.minus(apart);
    Phrase asked =
        Phrase.of(
            "pairs.test.agreement",
            "recorded",
            recorded,
            "measured",
            test.length().get(),
            "date",
            test.date());
    return Optional.of(
        Assessment.of(run.id(), "pairs.test.length-agreement", asked)
            .value(apart)
            .limit(allowed, margin)
            .limitedBy(Phrase.of("pairs.test.agreement-limit"))
            .verdict(
                margin.inMetres() >= 0 ? Verdict.WITHIN : Verdict.BEYOND,
                lengths.at20(LinkConfiguration.PERMANENT_LINK).source()));
  }

  private Assessment delay(RunTest test, LinkConfiguration configuration, Delay measured) {
    Delay limit = delays.delay(configuration);
    Delay margin = limit.minus(measured);
    return measured(test, configuration, "delay", measured, limit, margin)
        .assuming(
            Phrase.of("pairs.test.delay-frequency", "frequency", delays.judgedAt(configuration)))
        .verdict(verdict(margin.inSeconds()), delays.source(configuration));
  }

  private Assessment skew(RunTest test, LinkConfiguration configuration, Delay measured) {
    Delay limit = delays.skew(configuration);
    Delay margin = limit.minus(measured);
    return measured(test, configuration, "skew", measured, limit, margin)
        .verdict(verdict(margin.inSeconds()), delays.source(configuration));
  }

  private Assessment loop(RunTest test, LinkConfiguration configuration, Resistance measured) {
    Resistance limit = resistances.loop(configuration);
    Resistance margin = limit.minus(measured);
    return measured(test, configuration, "loop-resistance", measured, limit, margin)
        .verdict(verdict(margin.inOhms()), resistances.source(configuration));
  }

  /** The record has no resistance of single conductors; what they may differ by can be told. */
  private Assessment unbalance(RunTest test, LinkConfiguration configuration, Resistance loop) {
    Assessment.Builder builder =
        Assessment.of(
                test.run(),
                "pairs.test.unbalance-allowed",
                Phrase.of("pairs.test.unbalance", "loop", loop, "date", test.date()))
            .value(resistances.unbalance(configuration, loop));
    assumeConfiguration(test, builder);
    return builder.verdict(Verdict.INFORMATION, resistances.source(configuration));
  }

  /** What velocity a measured delay and the known length come to, and whether that is usual. */
  private Optional<Assessment> velocity(Run run, RunTest test) {
    Optional<Length> length = run.length().or(test::length);
    if (length.isEmpty() || test.delay().filter(d -> d.inSeconds() > 0).isEmpty()) {
      return Optional.empty();
    }
    Delay delay = test.delay().get();
    Ratio computed = Velocity.of(length.get(), delay);
    Ratio low = Ratio.percent(velocities.number("low_percent"));
    Ratio high = Ratio.percent(velocities.number("high_percent"));
    Phrase asked =
        Phrase.of(
            "pairs.test.velocity", "length", length.get(), "delay", delay, "date", test.date());
    Assessment.Builder builder =
        Assessment.of(run.id(), "pairs.test.velocity", asked).value(computed);
    if (computed.compareTo(low) < 0 || computed.compareTo(high) > 0) {
      builder.limitedBy(
          Phrase.of(
              "pairs.test.velocity-unusual",
              "shortest",
              Velocity.lengthOf(delay, low),
              "longest",
              Velocity.lengthOf(delay, high)));
    }
    return Optional.of(builder.verdict(Verdict.INFORMATION, velocities.source()));
  }

  /** A figure of a test beside its limit; the verdict is still to come. */
  private static Assessment.Builder measured(
      RunTest test,
      LinkConfiguration configuration,
      String what,
      Quantity value,
      Quantity limit,
      Quantity margin) {
    Phrase asked =
        Phrase.of(
            "pairs.test.asked-single",
            "what",
            Phrase.of("pairs.parameter." + what),
            "configuration",
            PairWords.of(configuration),
            "date",
            test.date());
    Assessment.Builder builder =
        Assessment.of(test.run(), "pairs.test." + what, asked)
            .value(value)
            .limit(limit, margin)
            .limitedBy(
                Phrase.of("pairs.test.limit-of", "configuration", PairWords.of(configuration)));
    assumeConfiguration(test, builder);
    return builder;
  }

  private static void assumeConfiguration(RunTest test, Assessment.Builder builder) {
    if (test.limit().isEmpty()) {
      builder.assuming(Phrase.of("pairs.test.taken-as-permanent-link"));
    }
  }

  private static Verdict verdict(double margin) {
    return margin >= 0 ? Verdict.WITHIN : Verdict.BEYOND;
  }
}
