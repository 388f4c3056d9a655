package wallbook.render.drawing;

import java.util.List;

/** An upright rectangle on the sheet in millimetres, {@code y} down. */
record Box(double left, double top, double right, double bottom) {
  static Box around(Pt centre, double width, double height) {
    return new Box(
        centre.x() - width / 2,
        centre.y() - height / 2,
        centre.x() + width / 2,
        centre.y() + height / 2);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  Pt centre() {
    return new Pt((left + right) / 2, (top + bottom) / 2);
  }

  /** Its corners from the upper left, clockwise as seen. */
  List<Pt> corners() {
    return List.of(
        new Pt(left, top), new Pt(right, top), new Pt(right, bottom), new Pt(left, bottom));
  }

  Box grown(double margin) {
    return new Box(left - margin, top - margin, right + margin, bottom + margin);
  }

  Box union(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** Whether the insides of two boxes meet; a shared edge does not count. */
  boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean holds(Box other) {
    return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
  }

  boolean holds(Pt point) {
    return left <= point.x() && point.x() <= right && top <= point.y() && point.y() <= bottom;
  }

  /** The point of this box that lies nearest to another point. */
  Pt nearest(Pt point) {
    return new Pt(
        Math.max(left, Math.min(right, point.x())), Math.max(top, Math.min(bottom, point.y())));
  }

  /** Whether a segment runs through the inside of this box (clipping after Liang and Barsky). */
  boolean isCrossedBy(Seg seg) {
    double from = 0;
    double to = 1;
    double dx = seg.b().x() - seg.a().x();
    double dy = seg.b().y() - seg.a().y();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {seg.a().x() - left, right - seg.a().x(), seg.a().y() - top, bottom - seg.a().y()};
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0) {
        if (q[i] <= 0) {
          return false;
        }
      } else if (p[i] < 0) {
        from = Math.max(from, q[i] / p[i]);
      } else {
        to = Math.min(to, q[i] / p[i]);
      }
    }
    return from < to - 1e-9;
  }
}
