package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Places circles inside a larger circle so that none overlap. Thick cables first, each where it
 * lies lowest touching two others or the wall, as cables come to lie; where that finds no room, all
 * circles are pushed apart from a regular start. Not finding a packing does not prove that there is
 * none.
 */
final class ConduitPacking {
  private static final double HAIR = 1e-7;
  private static final int PUSHES = 6000;
  private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

  private ConduitPacking() {}

  /**
   * A placed cable; the bore's centre is the origin, {@code y} down, all in the unit of the
   * diameters.
   */
  record Circle(double x, double y, double radius) {}

  /** The cables in the order given, or empty when no packing was found. */
  static Optional<List<Circle>> pack(double bore, List<Double> diameters) {
    double radius = bore / 2;
    double area = diameters.stream().mapToDouble(d -> d * d / 4).sum();
    if (area > radius * radius || diameters.stream().anyMatch(d -> d > bore)) {
      return Optional.empty();
    }
    int[] order =
        IntStream.range(0, diameters.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -diameters.get(i)))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] radii = Arrays.stream(order).mapToDouble(i -> diameters.get(i) / 2).toArray();
    return settle(radius, radii)
        .or(() -> push(radius, radii))
        .map(
            placed -> {
              Circle[] given = new Circle[order.length];
              for (int i = 0; i < order.length; i++) {
                given[order[i]] = placed.get(i);
              }
              return List.of(given);
            });
  }

  private static Optional<List<Circle>> settle(double bore, double[] radii) {
    List<Circle> placed = new ArrayList<>();
    for (double radius : radii) {
      Circle best = null;
      for (Circle spot : restingSpots(bore, placed, radius)) {
        boolean lower = best == null || spot.y() > best.y() + HAIR;
        if (lower && isFree(bore, placed, spot)) {
          best = spot;
        }
      }
      if (best == null) {
        return Optional.empty();
      }
      placed.add(best);
    }
    return Optional.of(placed);
  }

  private static List<Circle> restingSpots(double bore, List<Circle> placed, double radius) {
    List<Circle> spots = new ArrayList<>();
    spots.add(new Circle(0, bore - radius, radius));
    Circle wall = new Circle(0, 0, bore - 2 * radius);
    for (int i = 0; i < placed.size(); i++) {
      // The centre lies at bore - radius from the middle: the same as touching a circle of bore - 2
      // radius from outside.
      spots.addAll(touching(wall, placed.get(i), radius));
      for (int j = i + 1; j < placed.size(); j++) {
        spots.addAll(touching(placed.get(i), placed.get(j), radius));
      }
    }
    return spots;
  }

  /** Circles of a radius that touch two others from outside. */
  private static List<Circle> touching(Circle a, Circle b, double radius) {
    double fromA = a.radius() + radius + HAIR;
    double fromB = b.radius() + radius + HAIR;
    if (a.x() == 0 && a.y() == 0) {
      fromA -= 2 * HAIR;
    }
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double distance = Math.hypot(dx, dy);
    if (distance == 0 || distance > fromA + fromB || distance < Math.abs(fromA - fromB)) {
      return List.of();
    }
    double along = (fromA * fromA - fromB * fromB + distance * distance) / (2 * distance);
    double aside = Math.sqrt(Math.max(0, fromA * fromA - along * along));
    double x = a.x() + along * dx / distance;
    double y = a.y() + along * dy / distance;
    double ox = -aside * dy / distance;
    double oy = aside * dx / distance;
    return List.of(new Circle(x + ox, y + oy, radius), new Circle(x - ox, y - oy, radius));
  }

  private static boolean isFree(double bore, List<Circle> placed, Circle spot) {
    return Math.hypot(spot.x(), spot.y()) + spot.radius() <= bore
        && placed.stream().noneMatch(other -> overlap(spot, other) > 0);
  }

  private static double overlap(Circle a, Circle b) {
    return a.radius() + b.radius() - Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  /**
   * Pushes slightly swollen circles off one another and off the wall until the true circles are
   * free.
   */
  private static Optional<List<Circle>> push(double bore, double[] radii) {
    int n = radii.length;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      double from = bore * Math.sqrt((i + 0.5) / n) * 0.7;
      x[i] = from * Math.cos(i * GOLDEN_ANGLE);
      y[i] = from * Math.sin(i * GOLDEN_ANGLE);
    }
    for (int push = 0; push < PUSHES; push++) {
      for (int i = 0; i < n; i++) {
        for (int j = i + 1; j < n; j++) {
          double dx = x[j] - x[i];
          double dy = y[j] - y[i];
          double distance = Math.max(1e-12, Math.hypot(dx, dy));
          double excess = 1.0005 * (radii[i] + radii[j]) - distance;
          if (excess > 0) {
            double half = excess / 2 / distance;
            x[i] -= half * dx;
            y[i] -= half * dy;
            x[j] += half * dx;
            y[j] += half * dy;
          }
        }
        double from = Math.hypot(x[i], y[i]);
        double most = bore - 1.0005 * radii[i];
        if (from > most && from > 0) {
          x[i] *= Math.max(0, most) / from;
          y[i] *= Math.max(0, most) / from;
        }
      }
      List<Circle> circles = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        Circle circle = new Circle(x[i], y[i], radii[i]);
        if (!isFree(bore, circles, circle)) {
          break;
        }
        circles.add(circle);
      }
      if (circles.size() == n) {
        return Optional.of(circles);
      }
    }
    return Optional.empty();
  }
}
