package wallbook.compose.drawing;

/** The unit of the scale bar, which also chooses the family of round ratios. */
public enum ScaleUnit {
  METRE,
  FOOT
}
