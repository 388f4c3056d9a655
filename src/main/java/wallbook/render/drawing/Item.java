package wallbook.render.drawing;

import java.util.List;

/** A primitive of a scene; all measures in millimetres on the sheet. */
sealed interface Item {
  /** The smallest upright rectangle around it, line width left out. */
  Box bounds();

  /** A line of straight pieces, or a polygon when closed. */
  record Path(List<Pt> points, boolean closed, Ink ink) implements Item {
    public Path {
      points = List.copyOf(points);
    }

    @Override
    public Box bounds() {
      double left = Double.POSITIVE_INFINITY;
      double top = Double.POSITIVE_INFINITY;
      double right = Double.NEGATIVE_INFINITY;
      double bottom = Double.NEGATIVE_INFINITY;
      for (Pt point : points) {
        left = Math.min(left, point.x());
        top = Math.min(top, point.y());
        right = Math.max(right, point.x());
        bottom = Math.max(bottom, point.y());
      }
      return new Box(left, top, right, bottom);
    }
  }

  /** An ellipse turned clockwise about its centre; a circle when both radii are equal. */
  record Oval(Pt centre, double radiusX, double radiusY, double turnDeg, Ink ink) implements Item {
    @Override
    public Box bounds() {
      double cos = Math.cos(Math.toRadians(turnDeg));
      double sin = Math.sin(Math.toRadians(turnDeg));
      return Box.around(
          centre,
          2 * Math.hypot(radiusX * cos, radiusY * sin),
          2 * Math.hypot(radiusX * sin, radiusY * cos));
    }
  }

  /** Where words stand relative to their point. */
  enum Align {
    LEFT,
    CENTRE,
    RIGHT
  }

  /** How words look: size in points, weight. */
  record Type(double sizePt, boolean bold) {
    static final Type LABEL = new Type(7, false);
    static final Type LABEL_BOLD = new Type(7, true);
    static final Type SMALL = new Type(6.5, false);
    static final Type SMALL_BOLD = new Type(6.5, true);
    static final Type NAME = new Type(8, true);
  }

  /**
   * One line of text.
   *
   * @param at on the base line
   * @param turnDeg clockwise about {@code at}
   */
  record Words(Pt at, String text, Type type, Align align, double turnDeg) implements Item {
    @Override
    public Box bounds() {
      double width = TextMeasure.widthMm(text, type);
      double ascent = TextMeasure.ascentMm(type);
      double descent = TextMeasure.descentMm(type);
      double from =
          switch (align) {
            case LEFT -> 0;
            case CENTRE -> -width / 2;
            case RIGHT -> -width;
          };
      double cos = Math.cos(Math.toRadians(turnDeg));
      double sin = Math.sin(Math.toRadians(turnDeg));
      double[] xs = {from, from + width};
      double[] ys = {-ascent, descent};
      Box box = null;
      for (double x : xs) {
        for (double y : ys) {
          Pt corner = new Pt(at.x() + x * cos - y * sin, at.y() + x * sin + y * cos);
          Box point = new Box(corner.x(), corner.y(), corner.x(), corner.y());
          box = box == null ? point : box.union(point);
        }
      }
      return box;
    }
  }
}
