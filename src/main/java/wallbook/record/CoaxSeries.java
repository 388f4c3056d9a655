package wallbook.record;

/** Construction of a coaxial cable. */
public enum CoaxSeries implements Word {
  SERIES_59,
  SERIES_6,
  SERIES_11,
  LOW_LOSS_50_OHM_405;
}
