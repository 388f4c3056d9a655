package wallbook.render.press;

import wallbook.render.Face;

/**
 * How text looks. All lengths are in points.
 *
 * @param leadingFactor height of a line as a share of the size; 0 if {@code leadingPt} says it
 * @param colour red, green and blue in one number
 * @param raise how far the base line stands above that of the text around
 */
record TypeStyle(
    Face face,
    float size,
    float leadingFactor,
    float leadingPt,
    int colour,
    float letterSpacing,
    Keywords.Transform transform,
    Keywords.WhiteSpace whiteSpace,
    boolean breaksWords,
    boolean underlined,
    float raise) {

  /** Height of a line of this text. */
  float leading() {
    return leadingFactor > 0 ? leadingFactor * size : leadingPt;
  }
}
