package wallbook.compose.drawing;

import java.util.List;
import java.util.Optional;

/**
 * All rooms of a floor with their names, and where the runs come home.
 *
 * @param marks usually the heads only
 */
public record FloorPlan(
    Frame frame,
    List<NamedOutline> rooms,
    List<FloorMark> marks,
    Optional<NorthArrow> north,
    ScaleUnit unit)
    implements Drawing {
  public FloorPlan {
    rooms = List.copyOf(rooms);
    marks = List.copyOf(marks);
    if (rooms.isEmpty()) {
      throw new IllegalArgumentException("a floor plan needs a room");
    }
  }

  /** A place of the floor plan. */
  public record FloorMark(SymbolKind symbol, PointM point, List<String> label) {
    public FloorMark {
      label = List.copyOf(label);
    }
  }
}
