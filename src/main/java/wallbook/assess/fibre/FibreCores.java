package wallbook.assess.fibre;

import wallbook.quantity.Decibels;
import wallbook.record.FibreClass;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * Cores of the classes of fibre and what is lost where two different ones meet. The light is taken
 * to fill the core and the aperture it comes from, the worst case; a laser that lights only the
 * middle of a multimode core loses less.
 */
public final class FibreCores {
  private final Table classes;

  public FibreCores(Tables tables) {
    classes = tables.table("fibre-classes");
  }

  /** The class as it is printed, for instance {@code OS1a}. */
  public String name(FibreClass fibreClass) {
    return row(fibreClass).text("name");
  }

  /** Diameter of the core in micrometres, as it is printed. */
  public String coreMicrometres(FibreClass fibreClass) {
    return row(fibreClass).text("core_um");
  }

  /**
   * Loss by core area from one class into another: {@code 20·log10(d_from / d_to)} with the core
   * diameters d; none into a core at least as large.
   *
   * <p>Source: ratio of the core areas, with the diameters of ANSI/TIA-568.3-D.
   */
  public Decibels areaLoss(FibreClass from, FibreClass to) {
    return ratio(from, to, "core_um");
  }

  /**
   * Loss by aperture from one class into another: {@code 20·log10(NA_from / NA_to)}; none into an
   * aperture at least as large.
   */
  public Decibels apertureLoss(FibreClass from, FibreClass to) {
    return ratio(from, to, "aperture");
  }

  /** Whether the cores differ, so that the classes may not share a channel. */
  public boolean differ(FibreClass one, FibreClass other) {
    return row(one).number("core_um") != row(other).number("core_um");
  }

  /**
   * The class of lower modal bandwidth of two multimode classes of the same core: a channel of both
   * is judged as this one.
   */
  public FibreClass lower(FibreClass one, FibreClass other) {
    int byLaser = Double.compare(laserBandwidthMhzKm(one), laserBandwidthMhzKm(other));
    int order = byLaser != 0 ? byLaser : one.compareTo(other);
    return order <= 0 ? one : other;
  }

  /** Source of the losses: arithmetic from the published diameters and usual apertures. */
  public Source source() {
    return new Source(classes.source().citation(), Standing.DERIVED);
  }

  private double laserBandwidthMhzKm(FibreClass fibreClass) {
    Row row = row(fibreClass);
    return row.numberIfAny("emb_850_mhz_km").orElseGet(() -> row.number("ofl_850_mhz_km"));
  }

  private Decibels ratio(FibreClass from, FibreClass to, String column) {
    double ratio = row(from).number(column) / row(to).number(column);
    return Decibels.decibels(Math.max(0, 20 * Math.log10(ratio)));
  }

  private Row row(FibreClass fibreClass) {
    return classes.row(fibreClass.name());
  }
}
