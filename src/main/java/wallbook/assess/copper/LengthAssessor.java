package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.quantity.Temperature;
import wallbook.record.LinkConfiguration;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses the recorded length of a run as a permanent link, at its temperature. */
final class LengthAssessor {
  private final LengthLimits limits;

  LengthAssessor(Tables tables) {
    limits = new LengthLimits(tables);
  }

  List<Assessment> assess(PairRun run) {
    List<Assessment> assessments = new ArrayList<>();
    assessments.add(length(run));
    if (run.length().isPresent()) {
      assessments.add(hottest(run, run.length().get()));
      computed(run).ifPresent(assessments::add);
    }
    return assessments;
  }

  private Assessment length(PairRun run) {
    Assessment.Builder builder = run.ask("pairs.length", Phrase.of("pairs.length"));
    LengthLimits.Sourced at20 = limits.at20(LinkConfiguration.PERMANENT_LINK);
    if (run.length().isEmpty()) {
      return builder.notStated(List.of(Phrase.of("pairs.missing.length")), at20.source());
    }
    run.assumeTemperature(builder);
    assumeConstruction(run, builder);
    builder.value(run.length().get());
    Optional<LengthLimits.Sourced> limit = limits.link(run.temperature(), run.screened());
    if (limit.isEmpty()) {
      return builder
          .limitedBy(Phrase.of("pairs.length.too-hot", "temperature", run.temperature()))
          .verdict(Verdict.BEYOND, at20.source());
    }
    Length margin = limit.get().length().minus(run.length().get());
    boolean derated = limit.get().length().compareTo(at20.length()) < 0;
    return builder
        .limit(limit.get().length(), margin)
        .limitedBy(
            derated
                ? Phrase.of("pairs.length.derated", "temperature", run.temperature())
                : Phrase.of("pairs.length.link"))
        .verdict(margin.inMetres() >= 0 ? Verdict.WITHIN : Verdict.BEYOND, limit.get().source());
  }

  /** How hot the cable may get with this length. */
  private Assessment hottest(PairRun run, Length length) {
    Assessment.Builder builder = run.ask("pairs.length.hottest", Phrase.of("pairs.length.hottest"));
    assumeConstruction(run, builder);
    Optional<Temperature> hottest = limits.hottest(length, run.screened());
    if (hottest.isEmpty()) {
      return builder
          .limitedBy(Phrase.of("pairs.length.longer-than-any"))
          .verdict(Verdict.BEYOND, limits.at20(LinkConfiguration.PERMANENT_LINK).source());
    }
    return builder
        .value(hottest.get())
        .verdict(
            Verdict.INFORMATION, limits.link(hottest.get(), run.screened()).orElseThrow().source());
  }

  /** The formula beside the table, where heat shortens the run and the two differ. */
  private Optional<Assessment> computed(PairRun run) {
    Optional<LengthLimits.Sourced> computed = limits.computed(run.temperature(), false);
    if (run.screened() || computed.isEmpty() || isWhole(computed.get())) {
      return Optional.empty();
    }
    Assessment.Builder builder =
        run.ask("pairs.length.computed", Phrase.of("pairs.length.computed"));
    run.assumeTemperature(builder);
    return Optional.of(
        builder
            .value(computed.get().length())
            .verdict(Verdict.INFORMATION, computed.get().source()));
  }

  private boolean isWhole(LengthLimits.Sourced computed) {
    return computed.length().compareTo(limits.at20(LinkConfiguration.PERMANENT_LINK).length()) >= 0;
  }

  private static void assumeConstruction(PairRun run, Assessment.Builder builder) {
    if (run.cable().screened().isEmpty()) {
      builder.assuming(Phrase.of("pairs.unscreened-assumed"));
    }
  }
}
