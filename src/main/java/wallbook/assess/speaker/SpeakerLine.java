package wallbook.assess.speaker;

import wallbook.quantity.Decibels;
import wallbook.quantity.Factor;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;

/**
 * A loudspeaker, or several that act as one load, at the end of a wire: a voltage divider of the
 * load's nominal impedance and the wire's loop resistance. The impedance is taken as a resistance,
 * as the trade's tables do; it serves below some 50 ft of heavy wire, beyond which the wire's
 * inductance takes a little more from the highest octave.
 *
 * @param load lowest nominal impedance of everything on the line, above 0 Ω
 * @param loop resistance of the wire there and back, 0 Ω or more
 */
public record SpeakerLine(Resistance load, Resistance loop) {

  public SpeakerLine {
    requireLoad(load);
    if (loop.inOhms() < 0) {
      throw new IllegalArgumentException("a wire of negative resistance: " + loop);
    }
  }

  /** Level lost in the wire: {@code 20·log10((Z + R)/Z)}. */
  public Decibels loss() {
    return Decibels.decibels(20 * Math.log10((load.inOhms() + loop.inOhms()) / load.inOhms()));
  }

  /** The wire's resistance as a share of the load: {@code R/Z}. */
  public Ratio shareOfLoad() {
    return Ratio.fraction(loop.ratioTo(load));
  }

  /** Share of the amplifier's power that warms the wire: {@code R/(Z + R)}. */
  public Ratio powerLost() {
    return Ratio.fraction(loop.ratioTo(load.plus(loop)));
  }

  /**
   * Power in the load as a share of what it would be without the wire, from an amplifier that holds
   * its voltage: {@code (Z/(Z + R))²}.
   */
  public Ratio powerKept() {
    return Ratio.fraction(Math.pow(load.ratioTo(load.plus(loop)), 2));
  }

  /**
   * Damping factor at the load: {@code Z/(R_out + R)}.
   *
   * @param output resistance of the amplifier's output, {@code Z/DF} of its data sheet
   * @throws IllegalArgumentException if neither the output nor the wire has any resistance
   */
  public Factor damping(Resistance output) {
    return Factor.of(load.ratioTo(output.plus(loop)));
  }

  /** Largest loop that keeps within a share of the load: {@code R = p·Z}. */
  public static Resistance largestLoop(Resistance load, Ratio shareOfLoad) {
    requireLoad(load);
    return load.times(shareOfLoad.inFraction());
  }

  /** Largest loop that keeps within a loss of level: {@code R = Z·(10^(a/20) − 1)}. */
  public static Resistance largestLoop(Resistance load, Decibels loss) {
    requireLoad(load);
    return load.times(Math.pow(10, loss.inDecibels() / 20) - 1);
  }

  /**
   * Longest run, one way, that a loop resistance allows: {@code L = R/(2·R')}.
   *
   * @param conductor resistance per length of each pole
   */
  public static Length longest(Resistance loop, LinearResistance conductor) {
    return Length.metres(loop.inOhms() / (2 * conductor.inOhmsPerMetre()));
  }

  private static void requireLoad(Resistance load) {
    if (load.inOhms() <= 0) {
      throw new IllegalArgumentException("a load must be above 0 Ω: " + load);
    }
  }
}
