package wallbook.assess.fibre;

import java.util.Optional;
import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.Wavelength;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Length of a fibre by the time that a light pulse takes to its end and back. */
public final class Reflectometry {
  /** Speed of light in vacuum, exact (SI). */
  private static final double LIGHT_METRES_PER_SECOND = 299_792_458;

  private final Table indices;

  public Reflectometry(Tables tables) {
    indices = tables.table("fibre-group-index");
  }

  /**
   * Round-trip time {@code t = 2·L·n / c} with the length L, the group index n and the speed of
   * light c; empty at a wavelength for which the table has no index.
   */
  public Optional<Delay> roundTrip(Length length, boolean singleMode, Wavelength wavelength) {
    return index(singleMode, wavelength)
        .map(n -> Delay.seconds(2 * length.inMetres() * n / LIGHT_METRES_PER_SECOND));
  }

  /** Length {@code L = c·t / (2·n)} by the round-trip time t; empty likewise. */
  public Optional<Length> length(Delay roundTrip, boolean singleMode, Wavelength wavelength) {
    return index(singleMode, wavelength)
        .map(n -> Length.metres(LIGHT_METRES_PER_SECOND * roundTrip.inSeconds() / (2 * n)));
  }

  /** Source of the index at a wavelength that the table has. */
  public Source source(boolean singleMode, Wavelength wavelength) {
    return row(singleMode, wavelength).orElseThrow().source();
  }

  private Optional<Double> index(boolean singleMode, Wavelength wavelength) {
    return row(singleMode, wavelength).map(row -> row.number("group_index"));
  }

  private Optional<Row> row(boolean singleMode, Wavelength wavelength) {
    return indices.find(
        singleMode ? "single-mode" : "multimode",
        Long.toString(Math.round(wavelength.inNanometres())));
  }
}
