package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.record.WorstValue;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/** Assesses the worst value of one quantity as a test summary gives it. */
final class SummaryAssessor {
  /** Summaries print a tenth of a decibel; two margins that differ by more disagree. */
  private static final double PRINTED_DECIBELS = 0.1;

  /** What the summary allows to be judged. */
  private record Found(Decibels value, Decibels limit, Decibels margin, Source source) {}

  Assessment assess(
      Assessment.Builder builder, WorstValue worst, LimitLine line, Accuracy accuracy) {
    builder.assuming(Phrase.of("pairs.summary.worst-only"));
    Optional<Found> computed = computed(worst, line);
    Optional<Found> found = computed.or(() -> recorded(worst, line));
    if (found.isEmpty()) {
      return builder.notStated(missing(worst, line), line.source());
    }
    if (computed.isEmpty()) {
      builder.assuming(Phrase.of("pairs.summary.margin-as-recorded"));
    }
    worst
        .margin()
        .filter(m -> Math.abs(m.minus(found.get().margin()).inDecibels()) > PRINTED_DECIBELS)
        .ifPresent(
            m ->
                builder.assuming(
                    Phrase.of(
                        "pairs.summary.margins-differ",
                        "recorded",
                        m,
                        "computed",
                        found.get().margin())));
    builder
        .value(found.get().value())
        .limit(found.get().limit(), found.get().margin())
        .limitedBy(where(worst));
    Verdict verdict = accuracy.judge(found.get().margin(), builder);
    return builder.verdict(verdict, found.get().source());
  }

  private static Optional<Found> computed(WorstValue worst, LimitLine line) {
    Optional<Limit> limit = worst.frequency().flatMap(line::at);
    if (limit.isEmpty() || worst.value().isEmpty()) {
      return Optional.empty();
    }
    Decibels value = worst.value().get();
    return Optional.of(
        new Found(
            value, limit.get().value(), line.margin(limit.get(), value), limit.get().source()));
  }

  /** With the recorded margin alone, that is what is compared, with nothing. */
  private static Optional<Found> recorded(WorstValue worst, LimitLine line) {
    return worst.margin().map(m -> new Found(m, Decibels.decibels(0), m, line.source()));
  }

  private static List<Phrase> missing(WorstValue worst, LimitLine line) {
    List<Phrase> missing = new ArrayList<>();
    if (worst.value().isEmpty()) {
      missing.add(Phrase.of("pairs.missing.worst-value"));
    }
    if (worst.frequency().flatMap(line::at).isEmpty()) {
      missing.add(
          Phrase.of("pairs.missing.worst-frequency", "from", line.bottom(), "to", line.top()));
    }
    return missing;
  }

  private static Phrase where(WorstValue worst) {
    if (worst.pair().isPresent() && worst.frequency().isPresent()) {
      return Phrase.of(
          "pairs.summary.worst", "pair", worst.pair().get(), "frequency", worst.frequency().get());
    }
    if (worst.frequency().isPresent()) {
      return Phrase.of("pairs.summary.worst-frequency", "frequency", worst.frequency().get());
    }
    return worst
        .pair()
        .map(pair -> Phrase.of("pairs.summary.worst-pair", "pair", pair))
        .orElse(Phrase.of("pairs.summary.worst-anywhere"));
  }
}
