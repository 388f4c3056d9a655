package wallbook.assess.copper;

import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;

/**
 * Conversion between the length of a pair and the time a signal takes along it: {@code L = NVP·c·t}
 * one way, with NVP the nominal velocity of propagation as a share of that of light and c = 299 792
 * 458 m/s (exact, SI). The pair is some per cent longer than the jacket, by its twist.
 */
public final class Velocity {
  private static final double LIGHT_METRES_PER_SECOND = 299_792_458;

  private Velocity() {}

  /** Length of a pair from its delay one way. */
  public static Length lengthOf(Delay oneWay, Ratio nominalVelocity) {
    return Length.metres(
        nominalVelocity.inFraction() * LIGHT_METRES_PER_SECOND * oneWay.inSeconds());
  }

  /** Velocity that a length and a delay one way come to. */
  public static Ratio of(Length length, Delay oneWay) {
    return Ratio.fraction(length.inMetres() / (LIGHT_METRES_PER_SECOND * oneWay.inSeconds()));
  }
}
