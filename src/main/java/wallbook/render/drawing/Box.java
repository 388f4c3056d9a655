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
    double ax = seg.a().x();
    double ay = seg.a().y();
    double bx = seg.b().x();
    double by = seg.b().y();
    if (Math.max(ax, bx) <= left
        || Math.min(ax, bx) >= right
        || Math.max(ay, by) <= top
        || Math.min(ay, by) >= bottom) {
      return false;
    }
    double from = 0;
    double to = 1;
    if (ax != bx) {
      double atLeft = (left - ax) / (bx - ax);
      double atRight = (right - ax) / (bx - ax);
      from = Math.max(from, Math.min(atLeft, atRight));
      to = Math.min(to, Math.max(atLeft, atRight));
    }
    if (ay != by) {
      double atTop = (top - ay) / (by - ay);
      double atBottom = (bottom - ay) / (by - ay);
      from = Math.max(from, Math.min(atTop, atBottom));
      to = Math.min(to, Math.max(atTop, atBottom));
    }
    return from < to - 1e-9;
  }
}
