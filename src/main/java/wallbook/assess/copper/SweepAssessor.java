package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.record.LinkConfiguration;
import wallbook.record.SweepPoint;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses one quantity of a full sweep: the worst point, and whether the sweep is whole. */
final class SweepAssessor {
  private final SweepJudge judge;
  private final Table cover;

  SweepAssessor(Tables tables) {
    judge = new SweepJudge(tables);
    cover = tables.table("pair-sweep-cover");
  }

  Assessment assess(
      Assessment.Builder builder,
      List<SweepPoint> sweep,
      LimitLine line,
      LinkConfiguration configuration,
      Accuracy accuracy) {
    SweepOutcome outcome = judge.judge(sweep, line, configuration);
    if (!outcome.hasPoints()) {
      Phrase range =
          Phrase.of("pairs.missing.sweep-points", "from", line.bottom(), "to", line.top());
      return builder.notStated(List.of(range), line.source());
    }
    if (outcome.free() > 0) {
      builder.assuming(Phrase.counted("pairs.sweep.free", outcome.free()));
    }
    if (outcome.outside() > 0) {
      builder.assuming(Phrase.counted("pairs.sweep.outside", outcome.outside()));
    }
    List<Phrase> gaps = gaps(outcome, line);
    gaps.forEach(builder::onlyIf);
    if (outcome.worst().isEmpty()) {
      builder.limitedBy(Phrase.of("pairs.sweep.all-free"));
      return builder.verdict(gaps.isEmpty() ? Verdict.WITHIN : Verdict.CONDITIONAL, line.source());
    }
    SweepOutcome.Worst worst = outcome.worst().get();
    builder
        .value(Decibels.decibels(worst.point().valueInDecibels()))
        .limit(worst.limit().value(), worst.margin())
        .limitedBy(
            Phrase.of(
                "pairs.sweep.worst",
                "pair",
                worst.point().pair(),
                "frequency",
                worst.point().frequency(),
                "end",
                Phrase.of("pairs.end." + PairWords.slug(worst.point().direction()))));
    Verdict verdict = accuracy.judge(worst.margin(), builder);
    if (verdict == Verdict.WITHIN && !gaps.isEmpty()) {
      verdict = Verdict.CONDITIONAL;
    }
    return builder.verdict(verdict, worst.limit().source());
  }

  /** Whether a whole sweep of the line's quantity has no point beyond the line. */
  boolean meets(List<SweepPoint> sweep, LimitLine line, LinkConfiguration configuration) {
    SweepOutcome outcome = judge.judge(sweep, line, configuration);
    return outcome.hasPoints()
        && gaps(outcome, line).isEmpty()
        && outcome.worst().stream().allMatch(worst -> worst.margin().inDecibels() >= 0);
  }

  private List<Phrase> gaps(SweepOutcome outcome, LimitLine line) {
    List<Phrase> gaps = new ArrayList<>();
    Row whole = cover.row(line.parameter().word());
    Frequency top = line.top();
    if (outcome.top().compareTo(top) < 0) {
      gaps.add(Phrase.of("pairs.sweep.stops-short", "swept", outcome.top(), "limit", top));
    }
    int expected = (int) whole.number("combinations");
    if (outcome.pairs() < expected) {
      gaps.add(
          Phrase.of("pairs.sweep.pairs-missing", "found", outcome.pairs(), "expected", expected));
    }
    if (whole.yes("both_ends") && !outcome.bothEnds()) {
      gaps.add(Phrase.of("pairs.sweep.one-end"));
    }
    return gaps;
  }
}
