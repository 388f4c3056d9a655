package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;

/**
 * A room, closet, attic, crawl space or outdoor area, with the outline of its plan. Wall A runs
 * from the first corner to the second, wall B on to the third, and so round.
 */
public record Space(
    Origin origin,
    @Says(value = "Name for references.", example = "kitchen") @Id(Kind.SPACE) String id,
    @Says(value = "Name as printed.", example = "Kitchen") String name,
    @Says(value = "Floor it is on.", example = "ground") @RefersTo(Kind.FLOOR) String floor,
    @Says("What it is used for.") SpaceKind kind,
    @Says(
            value = "Corners in clockwise order seen from above, on the floor's plan.",
            example = "[[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]]")
        List<Point> outline,
    @Says(value = "Height of the ceiling above finished floor.", example = "9 ft")
        Optional<Length> ceilingHeight,
    @Says("Doors, windows and passages in its walls.") List<Opening> openings,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public Space {
    outline = List.copyOf(outline);
    openings = List.copyOf(openings);
  }
}
