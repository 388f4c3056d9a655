package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;

/**
 * A wall plate, box, ceiling point, blank plate, coil, pull box or exterior stub-out. Indoors on a
 * wall: wall, offset and height. On a ceiling or floor: at. Outdoors: two or more ties.
 */
public record Place(
    Origin origin,
    @Says(value = "Name for references.", example = "k-tv") @Id(Kind.PLACE) String id,
    @Says(value = "What stands on the plate, if a plate has a label of its own.", example = "K-01")
        Optional<String> label,
    @Says(value = "Name as printed.", example = "Television plate") String name,
    @Says(value = "Space it is in.", example = "kitchen") @RefersTo(Kind.SPACE) String space,
    @Says("How it is built.") PlaceKind kind,
    @Says("What it is meant for.") PlaceUse use,
    @Says(value = "Letter of the wall.", example = "A") Optional<String> wall,
    @Says(
            value = "From the left-hand corner, facing the wall from inside, to its centre.",
            example = "6 ft 2 in")
        Optional<Length> offset,
    @Says(
            value = "Of its centre, above finished floor indoors, above grade outdoors.",
            example = "18 in")
        Optional<Length> height,
    @Says(
            value = "Where it is on the plan: for ceiling and floor points.",
            example = "[10 ft, 7 ft]")
        Optional<Point> at,
    @Says(value = "How far behind the finished surface.", example = "2 in") Optional<Length> depth,
    @Says("Distances from fixed corners, for places outdoors.") List<Tie> ties,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public Place {
    ties = List.copyOf(ties);
  }
}
