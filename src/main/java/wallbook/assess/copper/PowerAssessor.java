package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.record.LinkConfiguration;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses which classes of power over Ethernet a run delivers, and what the device gets. */
final class PowerAssessor {
  private final List<PowerClass> classes;
  private final List<String> allPairs;
  private final PairLoop loops;
  private final Table bundles;
  private final LengthLimits lengths;

  PowerAssessor(Tables tables) {
    classes = tables.table("power-classes").rows().stream().map(PowerClass::of).toList();
    allPairs = new WireMap(tables).pairs();
    loops = new PairLoop(tables);
    bundles = tables.table("power-bundles");
    lengths = new LengthLimits(tables);
  }

  List<Assessment> assess(PairRun run) {
    List<Assessment> assessments = new ArrayList<>();
    boolean known = run.length().isPresent() || run.resistanceTest().isPresent();
    Optional<PairLoop.Loop> loop = known ? Optional.of(loops.channel(run)) : Optional.empty();
    for (PowerClass powerClass : classes) {
      assessments.add(assess(run, powerClass, loop));
    }
    OptionalInt highest =
        IntStream.range(0, classes.size()).filter(i -> assessments.get(i).holds()).max();
    if (highest.isEmpty()) {
      assessments.add(none(run, assessments.get(0)));
    } else {
      PowerClass powerClass = classes.get(highest.getAsInt());
      Assessment delivered = assessments.get(highest.getAsInt());
      assessments.add(highest(run, powerClass, delivered));
      draw(run, powerClass, delivered, loop.orElseThrow()).ifPresent(assessments::add);
    }
    return assessments;
  }

  /**
   * @param loop its loop, if the record tells what to compute it of
   */
  private Assessment assess(PairRun run, PowerClass powerClass, Optional<PairLoop.Loop> loop) {
    Assessment.Builder builder =
        run.ask(
            "pairs.poe.class-" + powerClass.number(),
            Phrase.of("pairs.poe", "class", powerClass.number(), "source", powerClass.source()));
    Optional<Phrase> hindrance =
        run.unusable().or(() -> tooFewPairs(run, powerClass)).or(() -> run.faultOn(allPairs));
    if (hindrance.isPresent()) {
      return builder.limitedBy(hindrance.get()).verdict(Verdict.BEYOND, powerClass.citation());
    }
    if (loop.isEmpty()) {
      return builder.notStated(
          List.of(Phrase.of("pairs.missing.length-or-loop")), powerClass.citation());
    }
    return deliver(run, powerClass, loop.get(), builder);
  }

  private Assessment deliver(
      PairRun run, PowerClass powerClass, PairLoop.Loop loop, Assessment.Builder builder) {
    Resistance powered = powerClass.loopOf(loop.resistance());
    Source source = powerClass.citation().and(loop.source());
    Optional<PowerOverPairs> power =
        PowerOverPairs.fromSource(powerClass.source(), powerClass.voltage(), powered);
    run.assumeTemperature(builder);
    loop.assumptions().forEach(builder::assuming);
    if (power.isEmpty()) {
      return builder
          .limitedBy(Phrase.of("pairs.poe.no-power", "resistance", powered))
          .verdict(Verdict.BEYOND, source);
    }
    Power arriving = power.get().atDevice();
    Power margin = arriving.minus(powerClass.required());
    builder
        .value(arriving)
        .limit(powerClass.required(), margin)
        .limitedBy(
            Phrase.of(
                "pairs.poe.loop",
                "resistance",
                powered,
                "loss",
                power.get().loss(),
                "voltage",
                power.get().voltageAtDevice(),
                "current",
                power.get().current(),
                "pairs",
                powerClass.pairs()));
    Verdict verdict = margin.inWatts() >= 0 ? Verdict.WITHIN : Verdict.BEYOND;
    if (needsHeatCheck(powerClass)) {
      source = source.and(bundles.row("code").source());
      verdict = bundled(run, builder, verdict);
    }
    return run.end(builder, beyondChannel(run, builder, verdict), source);
  }

  private boolean needsHeatCheck(PowerClass powerClass) {
    return powerClass.source().compareTo(codeApplies()) > 0;
  }

  /** Supplied power above which the electrical code limits the current of bundles. */
  private Power codeApplies() {
    return Power.watts(bundles.row("code").number("above_w"));
  }

  /** Above 60 W cables heat each other: the bundle decides, and the code has a table. */
  private Verdict bundled(PairRun run, Assessment.Builder builder, Verdict verdict) {
    Row heating = bundles.row("heating");
    int most = (int) heating.number("cables");
    builder.assuming(Phrase.of("pairs.poe.code-table", "power", codeApplies()));
    Optional<Integer> bundle = run.run().bundle();
    if (bundle.isEmpty()) {
      builder.assuming(Phrase.of("pairs.poe.bundle-unknown", "most", most));
    } else if (bundle.get() > most) {
      builder.onlyIf(Phrase.of("pairs.poe.bundle-large", "bundle", bundle.get(), "most", most));
      return verdict == Verdict.WITHIN ? Verdict.CONDITIONAL : verdict;
    }
    return verdict;
  }

  /** The standard knows no channel beyond its length; power alone may go further. */
  private Verdict beyondChannel(PairRun run, Assessment.Builder builder, Verdict verdict) {
    Length limit = lengths.at20(LinkConfiguration.CHANNEL).length();
    boolean beyond =
        run.length().filter(l -> l.plus(lengths.cords()).compareTo(limit) > 0).isPresent();
    if (!beyond) {
      return verdict;
    }
    builder.onlyIf(Phrase.of("pairs.poe.longer-than-channel", "limit", limit));
    return verdict == Verdict.WITHIN ? Verdict.CONDITIONAL : verdict;
  }

  private static Optional<Phrase> tooFewPairs(PairRun run, PowerClass powerClass) {
    return run.pairs() >= powerClass.pairs()
        ? Optional.empty()
        : Optional.of(
            Phrase.of("pairs.too-few-pairs", "needed", powerClass.pairs(), "present", run.pairs()));
  }

  private Assessment highest(PairRun run, PowerClass powerClass, Assessment delivered) {
    Assessment.Builder builder = run.ask("pairs.poe.highest", Phrase.of("pairs.poe.highest"));
    builder
        .value(delivered.value().orElseThrow())
        .limit(delivered.limit().orElseThrow(), delivered.margin().orElseThrow())
        .limitedBy(
            Phrase.of(
                "pairs.poe.highest-class",
                "class",
                powerClass.number(),
                "source",
                powerClass.source()));
    return builder.restingOn(delivered).verdict(delivered.verdict(), delivered.source());
  }

  /** No class holds: for the reason that the lowest does not. */
  private static Assessment none(PairRun run, Assessment lowest) {
    Assessment.Builder builder = run.ask("pairs.poe.highest", Phrase.of("pairs.poe.highest"));
    if (lowest.verdict() == Verdict.NOT_STATED) {
      return builder.notStated(lowest.missing(), lowest.source());
    }
    return builder
        .limitedBy(lowest.limitedBy().orElseThrow())
        .verdict(Verdict.BEYOND, lowest.source());
  }

  /** What the source must give for a device that takes all that its class allows. */
  private Optional<Assessment> draw(
      PairRun run, PowerClass powerClass, Assessment delivered, PairLoop.Loop loop) {
    return PowerOverPairs.forDevice(
            powerClass.required(), powerClass.voltage(), powerClass.loopOf(loop.resistance()))
        .map(
            power -> {
              Assessment.Builder builder =
                  run.ask(
                      "pairs.poe.draw",
                      Phrase.of(
                          "pairs.poe.draw",
                          "class",
                          powerClass.number(),
                          "device",
                          powerClass.required()));
              run.assumeTemperature(builder);
              loop.assumptions().forEach(builder::assuming);
              return builder
                  .value(power.atSource())
                  .limit(powerClass.source(), powerClass.source().minus(power.atSource()))
                  .limitedBy(
                      Phrase.of(
                          "pairs.poe.draw-loss",
                          "loss",
                          power.loss(),
                          "voltage",
                          power.voltageAtDevice(),
                          "current",
                          power.current()))
                  .verdict(Verdict.INFORMATION, delivered.source());
            });
  }
}
