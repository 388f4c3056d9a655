package wallbook.assess.coax;

import java.util.Optional;
import wallbook.quantity.Frequency;
import wallbook.quantity.LinearAttenuation;
import wallbook.reference.Row;

/**
 * Attenuation as a law of frequency fitted to a table: a second opinion beside interpolation.
 *
 * @param constant c
 * @param perRoot a, times the root of the frequency in MHz
 * @param perMegahertz b, times the frequency in MHz
 * @param from lowest frequency of the fit
 * @param to highest frequency of the fit; never used beyond
 * @param residual largest difference between the law and a row of the table
 */
public record CoaxLaw(
    LinearAttenuation constant,
    LinearAttenuation perRoot,
    LinearAttenuation perMegahertz,
    Frequency from,
    Frequency to,
    LinearAttenuation residual) {

  static CoaxLaw of(Row row) {
    return new CoaxLaw(
        perHundredFeet(row, "c_db_per_100ft"),
        perHundredFeet(row, "a_db_per_100ft"),
        perHundredFeet(row, "b_db_per_100ft"),
        Frequency.megahertz(row.number("from_mhz")),
        Frequency.megahertz(row.number("to_mhz")),
        perHundredFeet(row, "residual_db_per_100ft"));
  }

  /**
   * {@code c + a·√f + b·f}, f in MHz, at the table's reference temperature; empty outside the range
   * of the fit. The constant stands for the copper-clad steel centre, whose loss does not fall to
   * nothing at low frequency.
   */
  public Optional<LinearAttenuation> attenuation(Frequency frequency) {
    if (frequency.compareTo(from) < 0 || frequency.compareTo(to) > 0) {
      return Optional.empty();
    }
    double megahertz = frequency.inMegahertz();
    return Optional.of(
        constant.plus(perRoot.times(Math.sqrt(megahertz))).plus(perMegahertz.times(megahertz)));
  }

  private static LinearAttenuation perHundredFeet(Row row, String column) {
    return LinearAttenuation.decibelsPerHundredFeet(row.number(column));
  }
}
