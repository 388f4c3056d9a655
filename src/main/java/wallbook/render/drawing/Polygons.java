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
    for (Seg side : sides(polygon)) {
      boolean spans = side.a().y() > point.y() != side.b().y() > point.y();
      if (spans
          && point.x()
              < side.a().x()
                  + (side.b().x() - side.a().x())
                      * (point.y() - side.a().y())
                      / (side.b().y() - side.a().y())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Whether a box lies wholly inside. */
  static boolean holds(List<Pt> polygon, Box box) {
    return holds(polygon, box.centre()) && sides(polygon).stream().noneMatch(box::isCrossedBy);
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
