package wallbook.record;

/** Kind of an audio zone. */
public enum ZoneKind implements Word {
  AUDIO,
  HI_FI,
  SURROUND_PRIMARY,
  SURROUND_SECONDARY,
  LANDSCAPE;
}
