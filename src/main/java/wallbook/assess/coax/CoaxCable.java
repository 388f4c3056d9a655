package wallbook.assess.coax;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.reference.Source;

/**
 * One construction of coaxial cable and its attenuation.
 *
 * @param impedance characteristic impedance
 * @param from lowest frequency at which the attenuation is known
 * @param to highest such frequency
 * @param reference temperature of the table
 * @param sharePerKelvin share of the attenuation that is added per kelvin above the reference
 * @param points attenuation by rising frequency, at least two
 * @param law fitted to the points
 * @param source of impedance and range
 */
public record CoaxCable(
    Resistance impedance,
    Frequency from,
    Frequency to,
    Temperature reference,
    double sharePerKelvin,
    List<Point> points,
    CoaxLaw law,
    Optional<ConnectorAllowance> connectors,
    Source source) {
  public CoaxCable {
    points = List.copyOf(points);
  }

  /** One row of an attenuation table. */
  public record Point(Frequency frequency, LinearAttenuation attenuation, Source source) {}

  /** Design loss of one connector, up to a highest frequency. */
  public record ConnectorAllowance(Decibels each, Frequency upTo) {}

  /** Whether the attenuation is known at a frequency. */
  public boolean covers(Frequency frequency) {
    return frequency.compareTo(from) >= 0 && frequency.compareTo(to) <= 0;
  }

  /**
   * Attenuation by the table, straight between rows over the square root of frequency (as skin
   * effect has it) and corrected for temperature; empty outside the range.
   *
   * <p>Source: ANSI/SCTE 74 for 75 Ω drop cable; the table says more.
   */
  public Optional<LinearAttenuation> attenuation(Frequency frequency, Temperature temperature) {
    if (!covers(frequency)) {
      return Optional.empty();
    }
    Point low = points.get(segment(frequency));
    Point high = points.get(segment(frequency) + 1);
    double share =
        (root(frequency) - root(low.frequency()))
            / (root(high.frequency()) - root(low.frequency()));
    LinearAttenuation step = high.attenuation().minus(low.attenuation());
    return Optional.of(
        low.attenuation().plus(step.times(share)).times(temperatureFactor(temperature)));
  }

  /**
   * {@code 1 + k·(T − T_ref)}, k about 0.2 % per kelvin: half of copper's temperature coefficient,
   * since attenuation follows the root of resistance. Serves from −40 °C to 60 °C.
   */
  public double temperatureFactor(Temperature temperature) {
    return 1 + sharePerKelvin * temperature.kelvinsAbove(reference);
  }

  /** Source of the attenuation at a frequency of the range: the weaker of the rows beside it. */
  public Source source(Frequency frequency) {
    return points.get(segment(frequency)).source().and(points.get(segment(frequency) + 1).source());
  }

  /** Index of the row that a segment starts from; beyond the last row the last segment goes on. */
  private int segment(Frequency frequency) {
    int index = 0;
    while (index < points.size() - 2
        && points.get(index + 1).frequency().compareTo(frequency) <= 0) {
      index++;
    }
    return index;
  }

  private static double root(Frequency frequency) {
    return Math.sqrt(frequency.inMegahertz());
  }
}
