package wallbook.render.press;

import wallbook.render.Painting;

/** A picture as it is printed. All lengths are in points. */
sealed interface Image {
  /** Width that it has by itself. */
  float width();

  /** Height that it has by itself. */
  float height();

  /** What stands for it where it can't be seen. */
  record Drawn(Painting painting) implements Image {
    @Override
    public float width() {
      return (float) painting.widthMm() * Values.PT_PER_MM;
    }

    @Override
    public float height() {
      return (float) painting.heightMm() * Values.PT_PER_MM;
    }
  }

  /**
   * A JPEG or PNG file.
   *
   * @param file not to be changed
   */
  record Filed(byte[] file, float width, float height) implements Image {}
}
