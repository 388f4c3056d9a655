package wallbook.render.drawing;

/** Paints placed labels. */
final class Labels {
  private Labels() {}

  /**
   * The text is set toward its symbol, on white paper so that light lines behind do not run through
   * it.
   */
  static void draw(Canvas canvas, TextBlock block, PlacedLabel place, Pt symbol) {
    Box box = place.box();
    canvas.box(new Ink(0, Ink.Tone.NONE, Ink.Tone.WHITE, Ink.Dash.SOLID), box);
    Item.Align align;
    if (symbol.x() <= box.left()) {
      align = Item.Align.LEFT;
    } else if (symbol.x() >= box.right()) {
      align = Item.Align.RIGHT;
    } else {
      align = Item.Align.CENTRE;
    }
    canvas.block(block, box, align);
  }
}
