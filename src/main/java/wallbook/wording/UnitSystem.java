package wallbook.wording;

/** The units a reader is given lengths, forces, weights and temperatures in. */
public enum UnitSystem {
  /** Feet and inches, pounds, degrees Fahrenheit. */
  FEET_AND_INCHES,
  /** Metres, newtons, kilograms, degrees Celsius. */
  METRIC
}
