package wallbook.compose.drawing;

import java.util.List;
import java.util.Optional;

/**
 * One room from above with everything that was put into its walls and ceiling.
 *
 * @param wallLengths the length of each wall as the reader sees it, wall A first; an empty text
 *     leaves the wall without a dimension
 * @param neighbours adjoining rooms, drawn lightly as far as the sheet reaches
 * @param labels whether text stands at the marks or in a table beneath
 */
public record RoomPlan(
    Frame frame,
    Outline outline,
    List<String> wallLengths,
    List<Mark> marks,
    List<NamedOutline> neighbours,
    Optional<NorthArrow> north,
    ScaleUnit unit,
    LabelStyle labels)
    implements Drawing {

  /** How the marks are named. */
  public enum LabelStyle {
    /** Text at each mark where it fits without collisions; otherwise numbers and a table. */
    AS_FITS,
    /** Numbers at the marks, text in a table beneath. */
    NUMBERED
  }

  public RoomPlan {
    wallLengths = List.copyOf(wallLengths);
    marks = List.copyOf(marks);
    neighbours = List.copyOf(neighbours);
    if (wallLengths.size() != outline.wallCount()) {
      throw new IllegalArgumentException("one length text a wall");
    }
    for (Mark mark : marks) {
      if (mark.spot() instanceof Spot.OnWall on && on.wall() >= outline.wallCount()) {
        throw new IllegalArgumentException("no such wall: " + on.wall());
      }
    }
  }
}
