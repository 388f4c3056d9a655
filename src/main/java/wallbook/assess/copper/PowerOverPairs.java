package wallbook.assess.copper;

import java.util.Optional;
import wallbook.quantity.Current;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;

/**
 * Direct-current power over a loop of resistance R from a source of voltage V, as IEEE 802.3
 * clauses 33 and 145 reckon it: with the current I, {@code P_device = V·I − I²·R}. R is the loop
 * resistance of the powered pair set.
 *
 * @param atSource power that the source puts into the cable
 * @param atDevice power that is left at the far end
 */
public record PowerOverPairs(
    Power atSource, Power atDevice, Current current, Voltage voltageAtDevice) {

  /** Power that the cable turns into heat. */
  public Power loss() {
    return atSource.minus(atDevice);
  }

  /**
   * What arrives when the source gives its full power: {@code P_device = P − (P/V)²·R}. Empty if
   * less than half the source's voltage would be left, below which no device of steady power can
   * run.
   */
  public static Optional<PowerOverPairs> fromSource(
      Power source, Voltage voltage, Resistance loop) {
    return reckon(source.inWatts() / voltage.inVolts(), voltage, loop);
  }

  /**
   * What the source must give for a device of steady power: {@code I = (V − √(V² − 4·R·P)) /
   * (2·R)}. Empty if {@code P > V²/(4·R)}, more than the loop can pass.
   */
  public static Optional<PowerOverPairs> forDevice(Power device, Voltage voltage, Resistance loop) {
    double volts = voltage.inVolts();
    double root = volts * volts - 4 * loop.inOhms() * device.inWatts();
    if (root < 0) {
      return Optional.empty();
    }
    // The textbook form divides by R and fails for a loop of no resistance; this one does not.
    return reckon(2 * device.inWatts() / (volts + Math.sqrt(root)), voltage, loop);
  }

  private static Optional<PowerOverPairs> reckon(double amperes, Voltage voltage, Resistance loop) {
    double volts = voltage.inVolts() - amperes * loop.inOhms();
    if (volts < voltage.inVolts() / 2) {
      return Optional.empty();
    }
    return Optional.of(
        new PowerOverPairs(
            Power.watts(voltage.inVolts() * amperes),
            Power.watts(volts * amperes),
            Current.amperes(amperes),
            Voltage.volts(volts)));
  }
}
