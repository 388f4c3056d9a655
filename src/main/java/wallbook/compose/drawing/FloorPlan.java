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

  /**
   * A place of the floor plan.
   *
   * @param target where a touch leads
   */
  public record FloorMark(
      SymbolKind symbol, PointM point, List<String> label, Optional<Target> target) {
    public FloorMark {
      label = List.copyOf(label);
    }

    /** A mark that leads nowhere. */
    public FloorMark(SymbolKind symbol, PointM point, List<String> label) {
      this(symbol, point, label, Optional.empty());
    }
  }
}
