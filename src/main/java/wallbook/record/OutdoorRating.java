package wallbook.record;

/** Marks that allow a cable outdoors. */
public enum OutdoorRating implements Word {
  DIRECT_BURIAL,
  SUNLIGHT_RESISTANT,
  WET_LOCATION;
}
