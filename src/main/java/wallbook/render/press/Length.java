package wallbook.render.press;

/**
 * A length of a box.
 *
 * @param points part that is fixed
 * @param share part that follows the width of what lies around
 * @param auto whether the layout finds the length
 */
record Length(float points, float share, boolean auto) {
  static final Length ZERO = new Length(0, 0, false);
  static final Length AUTO = new Length(0, 0, true);

  /** Points, where what lies around has a width; nothing for a length that the layout finds. */
  float of(float aroundPt) {
    return points + share * aroundPt;
  }
}
