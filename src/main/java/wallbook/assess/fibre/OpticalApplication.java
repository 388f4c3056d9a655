package wallbook.assess.fibre;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wallbook.quantity.Count;
import wallbook.quantity.DataRate;
import wallbook.record.FibreClass;
import wallbook.reference.Source;

/**
 * An IEEE 802.3 application over optical fibre.
 *
 * @param name as the standard writes it, for instance {@code 10GBASE-SR}
 * @param fibres that one link takes
 * @param reaches by class of fibre; a class that is absent is not written into the application
 */
public record OpticalApplication(
    String name,
    DataRate rate,
    Count fibres,
    Map<FibreClass, OpticalReach> reaches,
    Source source) {
  public OpticalApplication {
    reaches = Map.copyOf(reaches);
  }

  /** What the application asks of a channel of the given class; empty if it does not run on it. */
  public Optional<OpticalReach> on(FibreClass fibreClass) {
    return Optional.ofNullable(reaches.get(fibreClass));
  }

  /** Topic of the assessments of this application. */
  public String topic() {
    return "fibre.application." + name.toLowerCase(Locale.ROOT);
  }
}
