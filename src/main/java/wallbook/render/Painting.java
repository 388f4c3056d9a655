package wallbook.render;

/** A drawing that can be painted without being read from a file format. */
public interface Painting {
  /** Printed width in millimetres. */
  double widthMm();

  /** Printed height in millimetres. */
  double heightMm();

  /** Paints the drawing, what lies below first. */
  void paintWith(Brush brush);

  /**
   * What paints. Points are in millimetres from the upper left corner of the drawing, x to the
   * right and y down; colours are red, green and blue in one number.
   */
  interface Brush {
    /** No colour. */
    int NONE = -1;

    /**
     * Sets how the shapes that follow are painted.
     *
     * @param lineMm width of their lines; 0 for none
     * @param line colour of their lines, or {@link #NONE}
     * @param fill colour of their insides, or {@link #NONE}
     * @param dashesMm lengths of dashes and gaps in turn; none for a line that goes through
     */
    void ink(double lineMm, int line, int fill, double... dashesMm);

    /**
     * Paints a line of straight pieces, or a polygon when closed.
     *
     * @param points x and y of each point in turn
     */
    void path(boolean closed, double... points);

    /** Paints an ellipse that is turned clockwise about its centre. */
    void oval(double x, double y, double radiusX, double radiusY, double turnDeg);

    /**
     * Writes one line of text in black.
     *
     * @param x of the point on the base line where the text begins
     * @param y of that point
     * @param turnDeg how far it is turned clockwise about that point
     */
    void words(String text, Face face, double sizePt, double x, double y, double turnDeg);
  }
}
