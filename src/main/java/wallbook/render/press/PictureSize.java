package wallbook.render.press;

/** Room that a picture takes, in points. */
record PictureSize(float width, float height) {

  /**
   * By the widths and heights of its style, else its own; it keeps its shape where it has to be
   * smaller.
   *
   * @param available width of what lies around
   * @param highest height that there is
   */
  static PictureSize of(Image image, BoxStyle box, float available, float highest) {
    float shape = image.width() / image.height();
    boolean bounded = available < Float.MAX_VALUE;
    boolean byWidth = !box.width().auto() && (bounded || box.width().share() == 0);
    float width = byWidth ? box.width().of(available) : image.width();
    float height = width / shape;
    if (!box.height().auto() && box.height().share() == 0) {
      height = box.height().points();
      width = byWidth ? width : height * shape;
    }
    if (bounded && !box.maxWidth().auto() && width > box.maxWidth().of(available)) {
      height *= box.maxWidth().of(available) / width;
      width = box.maxWidth().of(available);
    }
    float shrunk = Math.min(1, highest / height);
    if (available > 0 && width > available) {
      shrunk = Math.min(shrunk, available / width);
    }
    return new PictureSize(width * shrunk, height * shrunk);
  }
}
