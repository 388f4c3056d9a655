package wallbook.render.press;

/**
 * A border of one side.
 *
 * @param width in points; 0 if nothing is drawn
 * @param colour red, green and blue in one number
 */
record Border(float width, int colour) {
  static final Border NONE = new Border(0, 0);

  /** The one of two that is drawn where cells share a border: the wider (CSS 2.1, 17.6.2.1). */
  Border stronger(Border other) {
    return other.width > width ? other : this;
  }
}
