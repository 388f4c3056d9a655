package wallbook.assess.fibre;

import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * One way to state the loss of a link at a wavelength: measured, or budgeted by an edition.
 *
 * @param by edition or measurement, as a noun phrase
 * @param attenuation of more fibre at either end, such as patch cords
 */
record LossCandidate(Phrase by, Decibels loss, LinearAttenuation attenuation, Source source) {
  /** Length of more fibre that loses the given amount. */
  Length lengthFor(Decibels left) {
    return Length.metres(left.inDecibels() / attenuation.inDecibelsPerMetre());
  }
}
