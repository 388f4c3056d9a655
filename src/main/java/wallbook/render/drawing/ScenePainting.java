package wallbook.render.drawing;

import wallbook.render.Face;
import wallbook.render.Painting;

/**
 * A scene, painted as its SVG would show it.
 *
 * @param size printed size of a millimetre of the scene
 */
record ScenePainting(Scene scene, double size) implements Painting {
  private static final double STEPS_PER_MM = 10;

  @Override
  public double widthMm() {
    return size * rounded(scene.widthMm());
  }

  @Override
  public double heightMm() {
    return size * rounded(scene.heightMm());
  }

  /** Rounded up, so that nothing is cut off, as in the SVG. */
  private static double rounded(double millimetres) {
    return Math.ceil(millimetres * STEPS_PER_MM - 1e-6) / STEPS_PER_MM;
  }

  @Override
  public void paintWith(Brush brush) {
    for (Item item : scene.items()) {
      if (item instanceof Item.Path path) {
        paint(path, brush);
      } else if (item instanceof Item.Oval oval) {
        ink(oval.ink(), brush);
        brush.oval(
            oval.centre().x() * size,
            oval.centre().y() * size,
            oval.radiusX() * size,
            oval.radiusY() * size,
            oval.turnDeg());
      } else if (item instanceof Item.Words words) {
        paint(words, brush);
      }
    }
  }

  private void paint(Item.Path path, Brush brush) {
    double[] points = new double[path.points().size() * 2];
    int i = 0;
    for (Pt point : path.points()) {
      points[i++] = point.x() * size;
      points[i++] = point.y() * size;
    }
    ink(path.ink(), brush);
    brush.path(path.closed(), points);
  }

  private void ink(Ink ink, Brush brush) {
    double[] dashes = ink.dash().lengthsMm.clone();
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] *= size;
    }
    brush.ink(ink.lineMm() * size, colour(ink.line()), colour(ink.fill()), dashes);
  }

  private static int colour(Ink.Tone tone) {
    return tone == Ink.Tone.NONE ? Brush.NONE : Integer.parseInt(tone.code.substring(1), 16);
  }

  private void paint(Item.Words words, Brush brush) {
    String text = PlainText.clean(words.text());
    double width = TextMeasure.widthMm(text, words.type());
    double back =
        switch (words.align()) {
          case LEFT -> 0;
          case CENTRE -> width / 2;
          case RIGHT -> width;
        };
    double turn = Math.toRadians(words.turnDeg());
    brush.words(
        text,
        Face.of(words.type().bold(), false),
        words.type().sizePt() * size,
        (words.at().x() - back * StrictMath.cos(turn)) * size,
        (words.at().y() - back * StrictMath.sin(turn)) * size,
        words.turnDeg());
  }
}
