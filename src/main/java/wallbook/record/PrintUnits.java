package wallbook.record;

/** Units in which documents print lengths, forces and temperatures. */
public enum PrintUnits implements Word {
  FEET_AND_INCHES,
  METRIC;
}
