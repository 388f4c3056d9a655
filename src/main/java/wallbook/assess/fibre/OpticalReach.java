package wallbook.assess.fibre;

import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Wavelength;
import wallbook.reference.Row;
import wallbook.reference.Standing;

/**
 * What an application asks of a channel of one class of fibre.
 *
 * @param wavelength at which the channel's loss is budgeted and measured
 * @param reach longest channel, patch cords included
 * @param loss largest insertion loss of the channel
 * @param connections part of the loss that the standard allots to connectors and splices, where
 *     known
 * @param attenuation that the standard's limit rests on, where known
 * @param modeConditioning whether a mode-conditioning patch cord is needed at each end
 */
public record OpticalReach(
    Wavelength wavelength,
    Length reach,
    Standing reachStanding,
    Decibels loss,
    Standing lossStanding,
    Optional<Decibels> connections,
    Optional<LinearAttenuation> attenuation,
    boolean modeConditioning) {

  static OpticalReach of(Row row) {
    return new OpticalReach(
        Wavelength.nanometres(row.number("wavelength_nm")),
        Length.metres(row.number("reach_m")),
        Standing.of(row.text("reach_status")),
        Decibels.decibels(row.number("loss_db")),
        Standing.of(row.text("loss_status")),
        row.textIfAny("connection_db").map(Double::valueOf).map(Decibels::decibels),
        row.textIfAny("ieee_db_per_km")
            .map(Double::valueOf)
            .map(LinearAttenuation::decibelsPerKilometre),
        row.text("condition").equals("mode-conditioning"));
  }
}
