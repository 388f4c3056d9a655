package wallbook.assess.conduit;

import wallbook.quantity.Factor;
import wallbook.quantity.Force;
import wallbook.quantity.Length;
import wallbook.quantity.LinearForce;

/**
 * Force per length with which the most pressed cable bears on the inside of a bend; T is the
 * tension of all cables leaving the bend, R its inside radius, w the weight correction. From an
 * engineering reference on cable pulling. Limits are published for power cable only, so nothing is
 * judged.
 */
public final class SidewallPressure {
  private SidewallPressure() {}

  /** One cable: {@code T/R}. Taken for mixed cables too, as though one of them bore it all. */
  public static LinearForce single(Force tension, Length insideRadius) {
    return LinearForce.newtonsPerMetre(tension.inNewtons() / insideRadius.inMetres());
  }

  /** The middle one of three cradled: {@code (3w − 2)·T/(3R)}. */
  public static LinearForce cradled(Force tension, Length insideRadius, Factor correction) {
    return single(tension, insideRadius).times((3 * correction.value() - 2) / 3);
  }

  /** Each lower one of a triangle, or of two side by side: {@code w·T/(2R)}. */
  public static LinearForce triangular(Force tension, Length insideRadius, Factor correction) {
    return single(tension, insideRadius).times(correction.value() / 2);
  }
}
