package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses which Ethernet applications a run carries, and how much of their reach is left. */
final class EthernetAssessor {
  private final EthernetApplications applications;
  private final LengthLimits lengths;
  private final Table practice;

  EthernetAssessor(Tables tables) {
    applications = new EthernetApplications(tables);
    lengths = new LengthLimits(tables);
    practice = tables.table("ethernet-practice");
  }

  List<Assessment> assess(PairRun run) {
    List<Assessment> assessments = new ArrayList<>();
    HighestEthernet highest = new HighestEthernet(run);
    for (String key : applications.keys()) {
      Assessment assessment = application(run, key);
      assessments.add(assessment);
      highest.consider(applications.least(key), assessment);
      practice(run, key).ifPresent(assessments::add);
    }
    assessments.add(highest.assessment());
    return assessments;
  }

  private Assessment application(PairRun run, String key) {
    EthernetApplication least = applications.least(key);
    Assessment.Builder builder =
        run.ask("pairs.ethernet." + key, Phrase.of("pairs.ethernet", "application", least.name()));
    Optional<Phrase> hindrance =
        run.unusable().or(() -> tooFewPairs(run, least)).or(() -> run.faultOn(least.pairs()));
    if (hindrance.isPresent()) {
      return builder.limitedBy(hindrance.get()).verdict(Verdict.BEYOND, least.source());
    }
    if (run.category().isEmpty()) {
      return builder.notStated(List.of(Phrase.of("pairs.missing.category")), least.source());
    }
    Optional<EthernetApplication> application =
        applications.on(key, run.category().get(), run.screened());
    if (application.isEmpty()) {
      Phrase needs = PairWords.category(least.category());
      return builder
          .limitedBy(Phrase.of("pairs.ethernet.needs-category", "category", needs))
          .verdict(Verdict.BEYOND, least.source());
    }
    if (run.length().isEmpty()) {
      return builder.notStated(
          List.of(Phrase.of("pairs.missing.length")), application.get().source());
    }
    return reach(run, application.get(), builder);
  }

  /** Compares the channel, link and cords, with the reach and with what the heat leaves of it. */
  private Assessment reach(
      PairRun run, EthernetApplication application, Assessment.Builder builder) {
    Length channel = run.length().orElseThrow().plus(lengths.cords());
    builder.value(channel);
    Optional<LengthLimits.Sourced> link = lengths.link(run.temperature(), run.screened());
    if (link.isEmpty()) {
      run.assumeTemperature(builder);
      return builder
          .limitedBy(Phrase.of("pairs.length.too-hot", "temperature", run.temperature()))
          .verdict(Verdict.BEYOND, application.source());
    }
    Length cool = link.get().length().plus(lengths.cords());
    Optional<Length> sure = application.reach().map(reach -> shorter(reach, cool));
    Optional<Length> perhaps = application.conditionalReach().map(reach -> shorter(reach, cool));
    boolean within = fits(channel, sure);
    Length limit = within || perhaps.isEmpty() ? sure.orElseThrow() : perhaps.get();
    Verdict verdict =
        within ? Verdict.WITHIN : fits(channel, perhaps) ? Verdict.CONDITIONAL : Verdict.BEYOND;
    if (verdict == Verdict.CONDITIONAL) {
      String condition = application.condition().orElseThrow();
      builder.onlyIf(Phrase.of("pairs.ethernet.condition." + condition));
    }
    builder
        .limit(limit, limit.minus(channel))
        .assuming(Phrase.of("pairs.cords", "cords", lengths.cords()));
    run.assumeTemperature(builder);
    boolean heat = limit.equals(cool) && cool.compareTo(longest(application)) < 0;
    if (heat) {
      builder.limitedBy(Phrase.of("pairs.ethernet.heat", "temperature", run.temperature()));
      return run.end(builder, verdict, application.source().and(link.get().source()));
    }
    Phrase category = PairWords.category(application.category());
    builder.limitedBy(Phrase.of("pairs.ethernet.reach", "category", category));
    return run.end(builder, verdict, application.source());
  }

  /** What the trade allows itself beside the standard, for information. */
  private Optional<Assessment> practice(PairRun run, String key) {
    Optional<Row> row = run.category().flatMap(category -> practice.find(key, category.word()));
    if (row.isEmpty() || run.length().isEmpty() || run.unusable().isPresent() || run.screened()) {
      return Optional.empty();
    }
    Length low = Length.feet(row.get().number("low_ft"));
    Length high = Length.feet(row.get().number("high_ft"));
    Length length = run.length().get();
    String name = applications.least(key).name();
    return Optional.of(
        run.ask(
                "pairs.ethernet." + key + ".practice",
                Phrase.of("pairs.ethernet.practice", "application", name))
            .value(length)
            .limit(low, low.minus(length))
            .limitedBy(Phrase.of("pairs.ethernet.practice-limit", "low", low, "high", high))
            .verdict(Verdict.INFORMATION, row.get().source()));
  }

  private static Optional<Phrase> tooFewPairs(PairRun run, EthernetApplication application) {
    int needed = application.pairs().size();
    return run.pairs() >= needed
        ? Optional.empty()
        : Optional.of(Phrase.of("pairs.too-few-pairs", "needed", needed, "present", run.pairs()));
  }

  private static boolean fits(Length channel, Optional<Length> limit) {
    return limit.filter(l -> l.compareTo(channel) >= 0).isPresent();
  }

  private static Length longest(EthernetApplication application) {
    return application.conditionalReach().or(application::reach).orElseThrow();
  }

  private static Length shorter(Length a, Length b) {
    return a.compareTo(b) <= 0 ? a : b;
  }
}
