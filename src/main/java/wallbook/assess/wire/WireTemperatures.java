package wallbook.assess.wire;

import java.util.Comparator;
import java.util.Optional;
import wallbook.quantity.Temperature;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnvironment;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * The temperature that a run's resistance is reckoned at: what the record says is the hottest along
 * it, else the hottest that its surroundings are assumed to reach. The whole run is taken at that
 * temperature, which errs on the safe side.
 */
public final class WireTemperatures {
  private final Table assumed;

  public WireTemperatures(Tables tables) {
    assumed = tables.table("wire-temperatures");
  }

  /**
   * A temperature and where it comes from.
   *
   * @param assumption what was assumed, unless the record states it for the run
   */
  public record Taken(Temperature temperature, Optional<Phrase> assumption) {}

  /** The temperature that a run is reckoned at. */
  public Taken of(Job job, Run run) {
    if (run.hottest().isPresent()) {
      return new Taken(run.hottest().get(), Optional.empty());
    }
    Taken elsewhere =
        run.environments().stream()
            .filter(e -> e != RunEnvironment.ATTIC || job.facts().atticHigh().isEmpty())
            .map(this::assume)
            .max(Comparator.comparing(Taken::temperature))
            .orElseGet(() -> assume(RunEnvironment.IN_WALL));
    return job.facts()
        .atticHigh()
        .filter(high -> run.environments().contains(RunEnvironment.ATTIC))
        .filter(high -> high.compareTo(elsewhere.temperature()) >= 0)
        .map(high -> new Taken(high, Optional.of(phrase("attic", high))))
        .orElse(elsewhere);
  }

  private Taken assume(RunEnvironment environment) {
    Temperature temperature =
        Temperature.celsius(assumed.row(environment.word()).number("temperature_c"));
    return new Taken(temperature, Optional.of(phrase("temperature", temperature)));
  }

  private static Phrase phrase(String what, Temperature temperature) {
    return Phrase.of("wire.assume." + what, "temperature", temperature);
  }
}
