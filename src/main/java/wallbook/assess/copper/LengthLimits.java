package wallbook.assess.copper;

import java.util.Comparator;
import java.util.Optional;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.quantity.Temperature;
import wallbook.record.LinkConfiguration;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Greatest length of a balanced-pair link, at 20 °C and hotter. */
public final class LengthLimits {
  private final Table lengths;
  private final Table byTemperature;
  private final Table lossByTemperature;

  /** A length with where it comes from. */
  public record Sourced(Length length, Source source) {}

  public LengthLimits(Tables tables) {
    lengths = tables.table("pair-length");
    byTemperature = tables.table("pair-length-by-temperature");
    lossByTemperature = tables.table("pair-loss-by-temperature");
  }

  /** The length limit at 20 °C: 90 m for a permanent link, 100 m for a channel. */
  public Sourced at20(LinkConfiguration configuration) {
    Row row = lengths.row(configuration.word());
    return new Sourced(Length.metres(row.number("limit_m")), row.source());
  }

  /** Share above the limit that a length measured by a tester may be over, for its velocity. */
  public Ratio velocityAllowance(LinkConfiguration configuration) {
    return Ratio.percent(lengths.row(configuration.word()).number("velocity_allowance_percent"));
  }

  /** Cords that a channel has beyond its permanent link, both ends together: 10 m. */
  public Length cords() {
    return at20(LinkConfiguration.CHANNEL)
        .length()
        .minus(at20(LinkConfiguration.PERMANENT_LINK).length());
  }

  /**
   * Greatest permanent link with cable of a temperature. Unscreened: the standard's table, the next
   * hotter row, which has less than the formula's 90 m/k nowhere. Screened: 90 m/k, for want of a
   * table. Cooler than 20 °C: as at 20 °C. Empty above 60 °C, where nothing is published.
   */
  public Optional<Sourced> link(Temperature temperature, boolean screened) {
    return screened ? computed(temperature, true) : tabled(temperature);
  }

  /** Hottest temperature at which a permanent link of this length still holds. */
  public Optional<Temperature> hottest(Length link, boolean screened) {
    return byTemperature.rows().stream()
        .map(row -> Temperature.celsius(row.number("celsius")))
        .filter(t -> link(t, screened).filter(l -> l.length().compareTo(link) >= 0).isPresent())
        .max(Comparator.naturalOrder());
  }

  /**
   * Greatest permanent link by the rise of loss alone: {@code 90 m/k}. Not what the standard's
   * table prints (up to 0.8 m shorter).
   */
  public Optional<Sourced> computed(Temperature temperature, boolean screened) {
    Sourced limit = at20(LinkConfiguration.PERMANENT_LINK);
    Source source = limit.source().and(lossByTemperature.source());
    return lossFactor(temperature, screened)
        .map(k -> new Sourced(limit.length().times(1 / k), source));
  }

  /**
   * Insertion loss at a temperature as a multiple of that at 20 °C (TIA-568-C.2 clause 6.4.7):
   * unscreened {@code k = 1 + 0.004·(T − 20)} to 40 °C and {@code + 0.006·(T − 40)} from there to
   * 60 °C, screened {@code 1 + 0.002·(T − 20)} to 60 °C. 1 below 20 °C, empty above 60 °C.
   */
  public Optional<Double> lossFactor(Temperature temperature, boolean screened) {
    String construction = screened ? "screened" : "unscreened";
    double rise = 0;
    double covered = Double.NEGATIVE_INFINITY;
    for (Row row : lossByTemperature.rows()) {
      if (row.text("construction").equals(construction)) {
        double from = row.number("from_celsius");
        double to = row.number("to_celsius");
        double within = Math.min(temperature.inCelsius(), to) - from;
        rise += Math.max(0, within) * row.number("percent_per_kelvin") / 100;
        covered = Math.max(covered, to);
      }
    }
    return temperature.inCelsius() > covered ? Optional.empty() : Optional.of(1 + rise);
  }

  private Optional<Sourced> tabled(Temperature temperature) {
    return byTemperature.rows().stream()
        .filter(row -> row.number("celsius") >= temperature.inCelsius())
        .findFirst()
        .map(row -> new Sourced(Length.metres(row.number("limit_m")), row.source()));
  }
}
