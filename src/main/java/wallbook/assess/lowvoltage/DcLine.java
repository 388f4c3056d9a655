package wallbook.assess.lowvoltage;

import java.util.Optional;
import wallbook.quantity.Current;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Power;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;

/**
 * A two-wire direct-current feed with its load at the far end.
 *
 * @param supply voltage at the source, above 0 V
 * @param loop resistance of the wire there and back, above 0 Ω
 */
public record DcLine(Voltage supply, Resistance loop) {

  public DcLine {
    if (supply.inVolts() <= 0 || loop.inOhms() <= 0) {
      throw new IllegalArgumentException("a feed needs volts and ohms: " + supply + ", " + loop);
    }
  }

  /** Voltage lost over the wire: {@code 2·L·I·R'}, that is loop times current. */
  public Voltage drop(Current load) {
    return Voltage.volts(loop.inOhms() * load.inAmperes());
  }

  /**
   * Voltage at a load that draws the same current whatever its voltage: {@code V − I·R}; empty if
   * the wire cannot carry that current at all.
   */
  public Optional<Voltage> atLoad(Current load) {
    return Optional.of(supply.minus(drop(load))).filter(v -> v.inVolts() > 0);
  }

  /**
   * Voltage at a load that draws the same power whatever its voltage, as one with a converter does:
   * {@code (V + √(V² − 4·P·R))/2}; empty if {@code P > V²/(4·R)}, more than the wire can bring.
   */
  public Optional<Voltage> atLoad(Power load) {
    double volts = supply.inVolts();
    double square = volts * volts - 4 * load.inWatts() * loop.inOhms();
    return square < 0
        ? Optional.empty()
        : Optional.of(Voltage.volts((volts + Math.sqrt(square)) / 2));
  }

  /** A voltage at the load as the share of the supply that is lost on the way. */
  public Ratio shareLost(Voltage atLoad) {
    return Ratio.fraction(supply.minus(atLoad).ratioTo(supply));
  }

  /** Largest current within a share of the supply lost: {@code I = p·V/R}. */
  public Current largestCurrent(Ratio drop) {
    return Current.amperes(drop.inFraction() * supply.inVolts() / loop.inOhms());
  }

  /**
   * Power that a current brings to the load: {@code P = (V − I·R)·I}; empty if the wire cannot
   * carry that current at all.
   */
  public Optional<Power> powerAtLoad(Current load) {
    return atLoad(load).map(v -> Power.watts(v.inVolts() * load.inAmperes()));
  }

  /**
   * Longest run, one way, for a current within a share of the supply lost: {@code L =
   * p·V/(2·I·R')}.
   *
   * @param load current of the load, above 0 A
   * @param conductor resistance per length of one conductor, or of those in parallel that act as
   *     one
   */
  public static Length longest(
      Voltage supply, Current load, Ratio drop, LinearResistance conductor) {
    double volts = drop.inFraction() * supply.inVolts();
    return Length.metres(volts / (2 * load.inAmperes() * conductor.inOhmsPerMetre()));
  }

  /** Current of a constant-power load at the voltage that a share lost leaves it. */
  public static Current currentAt(Voltage supply, Power load, Ratio drop) {
    return Current.amperes(load.inWatts() / (supply.inVolts() * (1 - drop.inFraction())));
  }
}
