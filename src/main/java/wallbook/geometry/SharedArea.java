package wallbook.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import wallbook.quantity.Area;

/**
 * The area that lies in two outlines. The plane is cut into level bands at every corner and every
 * crossing of two sides; within a band the sides are straight and keep their order, so that the
 * width at mid-height times the height is the exact area.
 */
final class SharedArea {
  private SharedArea() {}

  static Area of(List<Side> sidesOfA, List<Side> sidesOfB) {
    List<Double> levels = levels(sidesOfA, sidesOfB);
    double sharedM2 = 0;
    for (int i = 1; i < levels.size(); i++) {
      double middle = (levels.get(i - 1) + levels.get(i)) / 2;
      double height = levels.get(i) - levels.get(i - 1);
      sharedM2 += height * sharedWidthM(crossings(sidesOfA, middle), crossings(sidesOfB, middle));
    }
    return Area.squareMetres(sharedM2);
  }

  private static List<Double> levels(List<Side> sidesOfA, List<Side> sidesOfB) {
    TreeSet<Double> levels = new TreeSet<>();
    sidesOfA.forEach(s -> levels.add(s.y1M()));
    sidesOfB.forEach(s -> levels.add(s.y1M()));
    for (Side a : sidesOfA) {
      for (Side b : sidesOfB) {
        double run = (a.x2M() - a.x1M()) * (b.y2M() - b.y1M());
        double rise = (a.y2M() - a.y1M()) * (b.x2M() - b.x1M());
        double offset =
            (b.x1M() - a.x1M()) * (b.y2M() - b.y1M()) - (b.y1M() - a.y1M()) * (b.x2M() - b.x1M());
        double share = offset / (run - rise);
        if (share > 0 && share < 1) {
          levels.add(a.y1M() + share * (a.y2M() - a.y1M()));
        }
      }
    }
    return List.copyOf(levels);
  }

  private static List<Double> crossings(List<Side> sides, double yM) {
    List<Double> crossings = new ArrayList<>();
    sides.stream().filter(s -> s.crossesLevel(yM)).forEach(s -> crossings.add(s.xAt(yM)));
    Collections.sort(crossings);
    return crossings;
  }

  private static double sharedWidthM(List<Double> a, List<Double> b) {
    double width = 0;
    for (int i = 1; i < a.size(); i += 2) {
      for (int j = 1; j < b.size(); j += 2) {
        double left = Math.max(a.get(i - 1), b.get(j - 1));
        width += Math.max(0, Math.min(a.get(i), b.get(j)) - left);
      }
    }
    return width;
  }
}
