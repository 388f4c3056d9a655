package wallbook.assess.fibre;

import wallbook.quantity.Wavelength;
import wallbook.record.LossReading;
import wallbook.record.RunTest;

/** One optical loss read in a test of a link. */
record Reading(RunTest test, LossReading loss) {
  /**
   * A source's nominal wavelength may be off by some ten nanometres, and multimode sources of 1310
   * nm serve as 1300 (from memory of IEC 61280-4-1: 850 ± 30 nm, 1300 ± 20 nm).
   */
  private static final double WINDOW_NM = 30;

  /** Whether the reading was made in the window of the given wavelength. */
  boolean isAt(Wavelength wavelength) {
    return Math.abs(loss.wavelength().inNanometres() - wavelength.inNanometres()) <= WINDOW_NM;
  }
}
