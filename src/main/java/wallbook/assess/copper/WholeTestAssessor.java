package wallbook.assess.copper;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.record.RunTest;
import wallbook.record.TestResult;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Draws the parts of a test together, and holds them against the result as recorded. */
final class WholeTestAssessor {
  /** Parts that say something beside the test's own limit and do not decide it. */
  private static final Set<String> BESIDE =
      Set.of("pairs.test.insertion-loss.iso", "pairs.test.length-agreement");

  private static final List<Verdict> WORST_FIRST =
      List.of(Verdict.BEYOND, Verdict.CONDITIONAL, Verdict.WITHIN);

  private final Source recorded;

  WholeTestAssessor(Tables tables) {
    recorded = tables.table("pair-standards").row("record").source();
  }

  Assessment assess(RunTest test, List<Assessment> parts) {
    Assessment.Builder builder =
        Assessment.of(
            test.run(),
            "pairs.test.result",
            Phrase.of(
                "pairs.test.result",
                "kind",
                Phrase.of("pairs.kind." + PairWords.slug(test.kind())),
                "date",
                test.date()));
    Optional<Assessment> decisive = decisive(parts);
    boolean failed = test.result() == TestResult.FAIL;
    if (decisive.isEmpty() || (failed && decisive.get().verdict() != Verdict.BEYOND)) {
      return asRecorded(builder, test);
    }
    Assessment part = decisive.get();
    part.value().ifPresent(builder::value);
    part.margin().ifPresent(margin -> builder.limit(part.limit().orElseThrow(), margin));
    if (part.verdict() == Verdict.BEYOND && test.result() == TestResult.PASS) {
      builder.assuming(Phrase.of("pairs.test.recorded-pass"));
    }
    if (parts.stream().anyMatch(p -> p.verdict() == Verdict.NOT_STATED)) {
      builder.assuming(Phrase.of("pairs.test.parts-not-stated"));
    }
    return builder
        .restingOn(part)
        .limitedBy(
            Phrase.of(
                "pairs.test.decided-by",
                "part",
                part.asked(),
                "by",
                part.limitedBy().orElseThrow()))
        .verdict(part.verdict(), part.source());
  }

  /** The part that decides: of the worst verdict the one with the least margin in decibels. */
  private static Optional<Assessment> decisive(List<Assessment> parts) {
    for (Verdict verdict : WORST_FIRST) {
      Optional<Assessment> worst =
          parts.stream()
              .filter(p -> !BESIDE.contains(p.topic()))
              .filter(p -> p.verdict() == verdict)
              .min(Comparator.comparingDouble(WholeTestAssessor::decibels));
      if (worst.isPresent()) {
        return worst;
      }
    }
    return Optional.empty();
  }

  private static double decibels(Assessment part) {
    return part.margin()
        .filter(Decibels.class::isInstance)
        .map(margin -> ((Decibels) margin).inDecibels())
        .orElse(Double.MAX_VALUE);
  }

  /** The result that the instrument gave, where the record holds nothing that says otherwise. */
  private Assessment asRecorded(Assessment.Builder builder, RunTest test) {
    return switch (test.result()) {
      case PASS ->
          builder.limitedBy(Phrase.of("pairs.test.as-recorded")).verdict(Verdict.WITHIN, recorded);
      case FAIL -> {
        Phrase why =
            test.reason()
                .map(reason -> Phrase.of("pairs.test.failed-because", "reason", reason))
                .orElse(Phrase.of("pairs.test.failed"));
        yield builder.limitedBy(why).verdict(Verdict.BEYOND, recorded);
      }
      default ->
          builder
              .limitedBy(Phrase.of("pairs.test.not-judged"))
              .verdict(Verdict.INFORMATION, recorded);
    };
  }
}
