package wallbook.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import wallbook.quantity.Area;
import wallbook.quantity.Length;
import wallbook.record.Point;

/**
 * The outline of a space: its corners in clockwise order seen from above, with y up the plan. Walls
 * are lettered from the first corner on.
 */
public final class RoomOutline {
  private final List<Wall> walls;

  /**
   * @param corners three or more
   * @throws IllegalArgumentException if there are fewer
   */
  public RoomOutline(List<Point> corners) {
    if (corners.size() < 3) {
      throw new IllegalArgumentException("an outline has at least three corners");
    }
    List<Wall> inOrder = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      inOrder.add(new Wall(letter(i), corners.get(i), corners.get((i + 1) % corners.size())));
    }
    this.walls = List.copyOf(inOrder);
  }

  /** The walls in order, A first. */
  public List<Wall> walls() {
    return walls;
  }

  /** The wall of the given letter, if the outline has it. */
  public Optional<Wall> wall(String letter) {
    for (Wall wall : walls) {
      if (wall.letter().equals(letter)) {
        return Optional.of(wall);
      }
    }
    return Optional.empty();
  }

  /** Whether the corners are listed clockwise, as they should be. */
  public boolean isClockwise() {
    return signedSquareMetres() < 0;
  }

  /** The area inside. */
  public Area area() {
    return Area.squareMetres(Math.abs(signedSquareMetres()));
  }

  /** Whether a point lies inside; points on a wall may come out either way. */
  public boolean contains(Point point) {
    double x = point.x().inMetres();
    double y = point.y().inMetres();
    boolean inside = false;
    for (Wall wall : walls) {
      double y1 = wall.start().y().inMetres();
      double y2 = wall.end().y().inMetres();
      double x1 = wall.start().x().inMetres();
      double x2 = wall.end().x().inMetres();
      if ((y1 > y) != (y2 > y) && x < (x2 - x1) * (y - y1) / (y2 - y1) + x1) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Whether a point lies inside, on a wall, or outside by no more than the tolerance. */
  public boolean contains(Point point, Length tolerance) {
    return contains(point) || distanceToWalls(point).compareTo(tolerance) <= 0;
  }

  /** Distance from a point, inside or outside, to the nearest wall. */
  public Length distanceToWalls(Point point) {
    double x = point.x().inMetres();
    double y = point.y().inMetres();
    return Length.metres(
        sides().stream().mapToDouble(side -> side.distanceM(x, y)).min().orElseThrow());
  }

  /** Whether two walls that are not neighbours meet, or two neighbours lie on each other. */
  public boolean crossesItself() {
    List<Side> sides = sides();
    int n = sides.size();
    for (int i = 0; i < n; i++) {
      if (sides.get(i).foldsBackInto(sides.get((i + 1) % n))) {
        return true;
      }
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours && sides.get(i).meets(sides.get(j))) {
          return true;
        }
      }
    }
    return false;
  }

  /** First corner, counted from 0, that is the same point as the one after it. */
  public OptionalInt repeatedCorner() {
    List<Side> sides = sides();
    return IntStream.range(0, sides.size()).filter(i -> sides.get(i).lengthM() == 0).findFirst();
  }

  /** Area that lies in both outlines; neither may cross itself. */
  public Area areaSharedWith(RoomOutline other) {
    return SharedArea.of(sides(), other.sides());
  }

  private List<Side> sides() {
    return walls.stream().map(wall -> Side.between(wall.start(), wall.end())).toList();
  }

  /**
   * Letter of the wall that begins at the corner of the given index, from 0: A to Z, then AA, AB,
   * ...
   */
  public static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }

  private double signedSquareMetres() {
    double twice = 0;
    for (Wall wall : walls) {
      twice +=
          wall.start().x().inMetres() * wall.end().y().inMetres()
              - wall.end().x().inMetres() * wall.start().y().inMetres();
    }
    return twice / 2;
  }
}
