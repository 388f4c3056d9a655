package wallbook.assess.copper;

import wallbook.quantity.Temperature;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnvironment;
import wallbook.wording.Phrase;

/**
 * The temperature that a run is assessed at, and where it comes from: the run's own, else that of
 * the attic if it passes one, else 20 °C, at which the limits are given.
 */
record CableTemperature(Temperature temperature, Phrase assumption) {
  private static final Temperature LIMITS_GIVEN_AT = Temperature.celsius(20);

  static CableTemperature of(Job job, Run run) {
    boolean attic = run.environments().contains(RunEnvironment.ATTIC);
    if (run.hottest().isPresent()) {
      return stated("pairs.temperature.run", run.hottest().get());
    }
    if (attic && job.facts().atticHigh().isPresent()) {
      return stated("pairs.temperature.attic", job.facts().atticHigh().get());
    }
    return stated(
        attic ? "pairs.temperature.attic-unknown" : "pairs.temperature.unknown", LIMITS_GIVEN_AT);
  }

  private static CableTemperature stated(String key, Temperature temperature) {
    return new CableTemperature(temperature, Phrase.of(key, "temperature", temperature));
  }
}
