package wallbook.render.press;

/** What stands in a slice: a line, a picture, a row. Lengths are in points, y runs down. */
interface Body {
  /** Nothing, of some height. */
  record Blank(float height) implements Body {
    @Override
    public void ground(Sheet sheet, float x, float y) {}

    @Override
    public void ink(Sheet sheet, float x, float y) {}
  }

  float height();

  /** Paints what lies behind all text: grounds and rules. */
  void ground(Sheet sheet, float x, float y);

  /** Paints what is read. */
  void ink(Sheet sheet, float x, float y);
}
