package wallbook.render.press;

/**
 * A line of a passage. All lengths are in points.
 *
 * @param from first character
 * @param to end of what is printed
 * @param left how far it is set in
 * @param width of what is printed
 * @param available width that it may fill
 * @param above room above its base line
 * @param below room below its base line
 */
record Line(
    Passage text,
    int from,
    int to,
    float left,
    float width,
    float available,
    float above,
    float below)
    implements Body {

  @Override
  public float height() {
    return above + below;
  }

  @Override
  public void ground(Sheet sheet, float x, float y) {
    if (text.hasGround()) {
      new LinePainter(sheet, this, x, y + above).ground();
    }
  }

  @Override
  public void ink(Sheet sheet, float x, float y) {
    new LinePainter(sheet, this, x, y + above).ink();
  }
}
