package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;

/** Where runs come home: a rack, a structured panel, the demarcation. */
public record Head(
    Origin origin,
    @Says(value = "Name for references.", example = "rack") @Id(Kind.HEAD) String id,
    @Says(value = "Name as printed.", example = "Equipment rack") String name,
    @Says("Kind of head.") HeadKind kind,
    @Says(value = "Space it stands in.", example = "utility") @RefersTo(Kind.SPACE) String space,
    @Says(value = "Letter of the wall it stands at.", example = "B") Optional<String> wall,
    @Says(value = "From the left-hand corner, facing the wall, to its centre.", example = "4 ft")
        Optional<Length> offset,
    @Says(value = "Of its centre above finished floor.", example = "4 ft") Optional<Length> height,
    @Says("Where it stands on the plan, if not at a wall.") Optional<Point> at,
    @Says("Its panels from the top.") List<Panel> panels,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public Head {
    panels = List.copyOf(panels);
  }

  /** The panel of the given name, if the head has it. */
  public Optional<Panel> panel(String id) {
    return panels.stream().filter(p -> p.id().equals(id)).findFirst();
  }
}
