package wallbook.assess.coax;

import wallbook.quantity.Decibels;
import wallbook.quantity.Factor;
import wallbook.quantity.Resistance;

/**
 * Where cable or equipment of one impedance meets another: the textbook relations of a transmission
 * line's reflection, with both impedances real.
 *
 * @param one impedance on one side, above zero
 * @param other impedance on the other side, above zero
 */
public record ImpedanceStep(Resistance one, Resistance other) {
  public ImpedanceStep {
    if (one.inOhms() <= 0 || other.inOhms() <= 0) {
      throw new IllegalArgumentException("an impedance that is not above zero");
    }
  }

  /** Whether there is a step at all. */
  public boolean isStep() {
    return !one.equals(other);
  }

  /** Standing wave ratio {@code (1 + Γ) / (1 − Γ)}: the larger impedance over the smaller. */
  public Factor standingWaveRatio() {
    return Factor.of((1 + reflection()) / (1 - reflection()));
  }

  /**
   * Return loss {@code −20·log10 Γ}.
   *
   * @throws IllegalStateException if there is no step and nothing returns
   */
  public Decibels returnLoss() {
    if (!isStep()) {
      throw new IllegalStateException("nothing returns from equal impedances");
    }
    return Decibels.decibels(-20 * Math.log10(reflection()));
  }

  /** Loss of what passes on, {@code −10·log10(1 − Γ²)}. */
  public Decibels mismatchLoss() {
    return Decibels.decibels(-10 * Math.log10(1 - reflection() * reflection()));
  }

  /** Magnitude of the reflection coefficient {@code Γ = |Z1 − Z2| / (Z1 + Z2)}. */
  private double reflection() {
    return Math.abs(one.minus(other).ratioTo(one.plus(other)));
  }
}
