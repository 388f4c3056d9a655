package wallbook.render.press;

/** What is seen of a box itself: its ground and its borders. Lengths are in points. */
final class Decor {
  private final BoxStyle style;
  private final float left;
  private final float width;

  /**
   * @param left from the page's content edge, or that of the cell it stands in
   */
  Decor(BoxStyle style, float left, float width) {
    this.style = style;
    this.left = left;
    this.width = width;
  }

  /**
   * Paints the part of the box that lies between two heights.
   *
   * @param begins whether the box begins here, and doesn't go on from the page before
   * @param ends whether it ends here
   */
  void paint(Sheet sheet, float x, float top, float bottom, boolean begins, boolean ends) {
    float from = x + left;
    if (style.background() != Values.TRANSPARENT) {
      sheet.rectangle(from, top, width, bottom - top, style.background());
    }
    Border above = style.border().get(BoxStyle.TOP);
    Border right = style.border().get(BoxStyle.RIGHT);
    Border below = style.border().get(BoxStyle.BOTTOM);
    Border before = style.border().get(BoxStyle.LEFT);
    rule(sheet, from, top, before.width(), bottom - top, before);
    rule(sheet, from + width - right.width(), top, right.width(), bottom - top, right);
    if (begins) {
      rule(sheet, from, top, width, above.width(), above);
    }
    if (ends) {
      rule(sheet, from, bottom - below.width(), width, below.width(), below);
    }
  }

  private static void rule(
      Sheet sheet, float x, float y, float width, float height, Border border) {
    if (border.width() > 0) {
      sheet.rectangle(x, y, width, height, border.colour());
    }
  }
}
