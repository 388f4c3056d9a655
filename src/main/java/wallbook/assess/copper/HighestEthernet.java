package wallbook.assess.copper;

import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.DataRate;
import wallbook.wording.Phrase;

/** Finds the fastest application that holds, and what stops the next. */
final class HighestEthernet {
  private final PairRun run;
  private Optional<EthernetApplication> best = Optional.empty();
  private Optional<Assessment> carried = Optional.empty();
  private Optional<EthernetApplication> next = Optional.empty();
  private Optional<Assessment> stopped = Optional.empty();

  HighestEthernet(PairRun run) {
    this.run = run;
  }

  /** Applications come in rising order of rate; a sure one goes before a faster perhaps. */
  void consider(EthernetApplication application, Assessment assessment) {
    boolean sure = assessment.verdict() == Verdict.WITHIN;
    boolean noneSure = carried.filter(a -> a.verdict() == Verdict.WITHIN).isEmpty();
    if (sure || (assessment.holds() && noneSure)) {
      best = Optional.of(application);
      carried = Optional.of(assessment);
      next = Optional.empty();
      stopped = Optional.empty();
    } else if (stopped.isEmpty()) {
      next = Optional.of(application);
      stopped = Optional.of(assessment);
    }
  }

  Assessment assessment() {
    Assessment.Builder builder =
        run.ask("pairs.ethernet.highest", Phrase.of("pairs.ethernet.highest"));
    if (carried.isEmpty()) {
      Assessment first = stopped.orElseThrow();
      if (first.verdict() == Verdict.NOT_STATED) {
        return builder.notStated(first.missing(), first.source());
      }
      return builder
          .limitedBy(first.limitedBy().orElseThrow())
          .verdict(Verdict.BEYOND, first.source());
    }
    DataRate rate = best.orElseThrow().rate();
    return builder
        .value(rate)
        .limitedBy(limit())
        .restingOn(carried.get())
        .verdict(carried.get().verdict(), carried.get().source());
  }

  private Phrase limit() {
    String carriedName = best.orElseThrow().name();
    return next.map(
            application ->
                Phrase.of(
                    "pairs.ethernet.highest-next",
                    "application",
                    carriedName,
                    "next",
                    application.name(),
                    "why",
                    why(stopped.orElseThrow())))
        .orElseGet(() -> carried.orElseThrow().limitedBy().orElseThrow());
  }

  /** What stops an application: its condition, its limit, or what the record lacks. */
  private static Phrase why(Assessment assessment) {
    if (assessment.verdict() == Verdict.CONDITIONAL) {
      return assessment.conditions().get(0);
    }
    return assessment.limitedBy().or(() -> assessment.missing().stream().findFirst()).orElseThrow();
  }
}
