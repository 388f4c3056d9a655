package wallbook.assess.speaker;

import java.util.List;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;

/** What several loudspeakers come to as one load of an amplifier. */
public final class SpeakerLoads {
  private SpeakerLoads() {}

  /**
   * Loads side by side: {@code Z = 1/Σ(1/Z_i)}.
   *
   * @param loads one or more, each above 0 Ω
   * @throws IllegalArgumentException if there is none, or one is not above 0 Ω
   */
  public static Resistance parallel(List<Resistance> loads) {
    return Resistance.ohms(1 / loads.stream().mapToDouble(z -> 1 / checked(z)).sum());
  }

  /**
   * Loads one after another: {@code Z = ΣZ_i}.
   *
   * @throws IllegalArgumentException if there is none, or one is not above 0 Ω
   */
  public static Resistance series(List<Resistance> loads) {
    double ohms = loads.stream().mapToDouble(SpeakerLoads::checked).sum();
    return Resistance.ohms(checked(Resistance.ohms(ohms)));
  }

  /**
   * Load of a constant-voltage line: {@code Z = V²/P}.
   *
   * @param line nominal voltage of the line
   * @param taps sum of the powers that the transformers are tapped at, above 0 W
   */
  public static Resistance onConstantVoltage(Voltage line, Power taps) {
    return Resistance.ohms(line.inVolts() * line.inVolts() / taps.inWatts());
  }

  private static double checked(Resistance load) {
    if (load.inOhms() <= 0) {
      throw new IllegalArgumentException("a load must be above 0 Ω: " + load);
    }
    return load.inOhms();
  }
}
