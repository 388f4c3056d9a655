package wallbook.assess.conductor;

import wallbook.quantity.Area;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;

/**
 * One conductor of annealed copper.
 *
 * @param diameter of the solid conductor of the gauge, without insulation
 * @param area of the copper
 * @param resistance per length of one conductor at the reference temperature
 * @param reference temperature that the resistance is given at
 * @param coefficientPerKelvin share of the resistance that is added per kelvin above the reference
 */
public record CopperConductor(
    Length diameter,
    Area area,
    LinearResistance resistance,
    Temperature reference,
    double coefficientPerKelvin) {

  /**
   * Resistance per length of one conductor: {@code R = R20 · (1 + α · (T − 20 °C))} (IACS annealed
   * copper, α = 0.00393/K). The straight line serves from the cold of an attic to the heat of a
   * bundle, some −40 °C to 100 °C.
   */
  public LinearResistance resistanceAt(Temperature temperature) {
    return resistance.times(1 + coefficientPerKelvin * temperature.kelvinsAbove(reference));
  }

  /**
   * Resistance of the way there and back over a run of two such conductors: {@code 2·r·L}.
   *
   * @param run length of the run, one way
   */
  public Resistance loopOver(Length run, Temperature temperature) {
    return resistanceAt(temperature).over(run).times(2);
  }
}
