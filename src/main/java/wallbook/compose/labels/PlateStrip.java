package wallbook.compose.labels;

import java.util.List;
import java.util.Set;
import wallbook.finding.SourcePosition;

/**
 * The label of a plate or box.
 *
 * @param title the plate's own label, or its name if it has none
 * @param where where it is; no forms if that must not be told
 * @param jacks number and label of each cable behind it, in order
 * @param code texts of the code, the fullest first
 */
public record PlateStrip(
    String title,
    List<String> where,
    List<String> jacks,
    List<String> code,
    Set<String> names,
    SourcePosition at)
    implements Label {
  public PlateStrip {
    where = List.copyOf(where);
    jacks = List.copyOf(jacks);
    code = List.copyOf(code);
    names = Set.copyOf(names);
  }
}
