package wallbook.check;

import java.util.Optional;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Cable;
import wallbook.record.Origin;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/** Whether a cable has the conductors that something joins in parallel. */
final class Conductors {
  private Conductors() {}

  static void check(
      Run run, Cable cable, Optional<Integer> inParallel, Origin origin, Findings findings) {
    Optional<Integer> conductors = cable.conductors().or(() -> cable.pairs().map(p -> 2 * p));
    if (conductors.isEmpty() || inParallel.isEmpty()) {
      return;
    }
    int most = conductors.get() / 2;
    if (inParallel.get() > most) {
      findings.add(
          RunFinding.of(
                  Severity.ERROR,
                  "more-conductors-than-there-are",
                  origin.position("conductors_in_parallel"),
                  run,
                  "count",
                  inParallel.get(),
                  "conductors",
                  conductors.get())
              .found(inParallel.get().toString())
              .expecting(Phrase.of("expected.at-most", "limit", most)));
    }
  }
}
