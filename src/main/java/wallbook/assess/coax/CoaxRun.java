package wallbook.assess.coax;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.Temperature;
import wallbook.record.CoaxSeries;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/**
 * One coaxial run as it is assessed.
 *
 * @param temperature at which it is computed; empty for that of the cable's table
 * @param splitters loss of the splitter outputs that it ends at
 * @param missing what the record lacks of that loss
 * @param toAntenna whether an end is at an antenna
 * @param assumptions what is taken for granted whatever the use
 */
record CoaxRun(
    Run run,
    Optional<CoaxSeries> series,
    Optional<Length> length,
    Optional<Temperature> temperature,
    Decibels splitters,
    List<Phrase> missing,
    boolean toAntenna,
    List<Phrase> assumptions) {
  CoaxRun {
    missing = List.copyOf(missing);
    assumptions = List.copyOf(assumptions);
  }

  String id() {
    return run.id();
  }

  /** Why nothing can be carried; empty for a sound run. */
  Optional<Phrase> outOfUse() {
    return switch (run.condition()) {
      case DAMAGED -> Optional.of(Phrase.of("coax.limit.damaged"));
      case ABANDONED -> Optional.of(Phrase.of("coax.limit.abandoned"));
      case IN_SERVICE, DARK -> Optional.empty();
    };
  }
}
