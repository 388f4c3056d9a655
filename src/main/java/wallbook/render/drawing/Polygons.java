package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Plane geometry of closed polygons on the sheet. */
final class Polygons {
  private Polygons() {}

  static List<Seg> sides(List<Pt> polygon) {
    List<Seg> sides = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      sides.add(new Seg(polygon.get(i), polygon.get((i + 1) % polygon.size())));
    }
    return sides;
  }

  /** Even-odd rule. */
  static boolean holds(List<Pt> polygon, Pt point) {
    boolean inside = false;
    Pt a = polygon.get(polygon.size() - 1);
    for (Pt b : polygon) {
      boolean spans = a.y() > point.y() != b.y() > point.y();
      if (spans && point.x() < a.x() + (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y())) {
        inside = !inside;
      }
      a = b;
    }
    return inside;
  }

  /** Whether a box lies wholly inside. */
  static boolean holds(List<Pt> polygon, Box box) {
    return holds(polygon, sides(polygon), box);
  }

  /**
   * The same, for whoever asks about many boxes.
   *
   * @param sides those of the polygon
   */
  static boolean holds(List<Pt> polygon, List<Seg> sides, Box box) {
    return holds(polygon, box.centre()) && !isCrossed(box, sides);
  }

  /** Whether any of the segments runs through the inside of a box. */
  static boolean isCrossed(Box box, List<Seg> segments) {
    for (Seg segment : segments) {
      if (box.isCrossedBy(segment)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the inside of a box meets that of any other. */
  static boolean isOverlapped(Box box, List<Box> others) {
    for (Box other : others) {
      if (box.overlaps(other)) {
        return true;
      }
    }
    return false;
  }

  /** The part of a polygon inside a box (Sutherland and Hodgman); empty when there is none. */
  static List<Pt> clipped(List<Pt> polygon, Box box) {
    List<Pt> left = half(polygon, p -> p.x() - box.left());
    List<Pt> right = half(left, p -> box.right() - p.x());
    List<Pt> top = half(right, p -> p.y() - box.top());
    return half(top, p -> box.bottom() - p.y());
  }

  private static List<Pt> half(List<Pt> polygon, ToDoubleFunction<Pt> inside) {
    List<Pt> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Pt from = polygon.get(i);
      Pt to = polygon.get((i + 1) % polygon.size());
      double a = inside.applyAsDouble(from);
      double b = inside.applyAsDouble(to);
      if (a >= 0) {
        kept.add(from);
      }
      if (a < 0 != b < 0) {
        kept.add(from.toward(to, a / (a - b)));
      }
    }
    return kept;
  }
}
