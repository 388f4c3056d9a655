package wallbook.assess.coax;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.record.CoaxSeries;
import wallbook.reference.Row;
import wallbook.reference.Tables;

/**
 * The coaxial cables of the reference tables.
 *
 * <pre>{@code
 * new CoaxCables(tables).of(CoaxSeries.SERIES_6)
 *     .attenuation(Frequency.megahertz(1000), Temperature.celsius(20)) // 6.55 dB/100 ft
 * }</pre>
 */
public final class CoaxCables {
  private final Tables tables;
  private final Map<CoaxSeries, CoaxCable> known = new ConcurrentHashMap<>();

  public CoaxCables(Tables tables) {
    this.tables = tables;
  }

  public CoaxCable of(CoaxSeries series) {
    return known.computeIfAbsent(series, this::read);
  }

  private CoaxCable read(CoaxSeries series) {
    Row row = tables.table("coax-cables").row(series.word());
    return new CoaxCable(
        Resistance.ohms(row.number("impedance_ohm")),
        Frequency.megahertz(row.number("from_mhz")),
        Frequency.megahertz(row.number("to_mhz")),
        Temperature.celsius(row.number("reference_celsius")),
        row.number("temperature_percent_per_kelvin") / 100,
        tables.table("coax-attenuation").rows().stream()
            .filter(point -> point.text("series").equals(series.word()))
            .map(CoaxCables::point)
            .toList(),
        CoaxLaw.of(tables.table("coax-laws").row(series.word())),
        row.textIfAny("connector_db")
            .map(
                each ->
                    new CoaxCable.ConnectorAllowance(
                        Decibels.decibels(Double.parseDouble(each)),
                        Frequency.megahertz(row.number("connector_to_mhz")))),
        row.source());
  }

  /**
   * Solid-dielectric cable of the same outer diameter, at the highest frequency at which it is
   * published; empty where none is mistaken for the series.
   */
  public Optional<CoaxCable.Point> lookAlike(CoaxSeries series) {
    return tables.table("coax-look-alikes").rows().stream()
        .filter(row -> row.text("series").equals(series.word()))
        .map(CoaxCables::point)
        .reduce((lower, higher) -> higher);
  }

  private static CoaxCable.Point point(Row row) {
    return new CoaxCable.Point(
        Frequency.megahertz(row.number("frequency_mhz")),
        LinearAttenuation.decibelsPerHundredFeet(row.number("attenuation_db_per_100ft")),
        row.source());
  }
}
