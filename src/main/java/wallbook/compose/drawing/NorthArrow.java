package wallbook.compose.drawing;

/**
 * Where true north lies on the page.
 *
 * @param clockwiseFromPageUpDeg degrees from page-up to true north, clockwise
 * @param letter what stands at the arrow's head
 */
public record NorthArrow(double clockwiseFromPageUpDeg, String letter) {
  public NorthArrow {
    Values.finite("clockwiseFromPageUpDeg", clockwiseFromPageUpDeg);
  }
}
