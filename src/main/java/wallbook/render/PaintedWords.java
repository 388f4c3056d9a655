package wallbook.render;

/** Notes the words of a drawing. */
final class PaintedWords implements Painting.Brush {
  private final StringBuilder into;

  PaintedWords(StringBuilder into) {
    this.into = into;
  }

  @Override
  public void ink(double lineMm, int line, int fill, double... dashesMm) {}

  @Override
  public void path(boolean closed, double... points) {}

  @Override
  public void oval(double x, double y, double radiusX, double radiusY, double turnDeg) {}

  @Override
  public void words(String text, Face face, double sizePt, double x, double y, double turnDeg) {
    into.append(text);
  }
}
