package wallbook.compose.labels;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Length;

/**
 * The label of one end of a cable.
 *
 * @param label the run's label
 * @param thisEnd where it is stuck on; no forms if that must not be told
 * @param otherEnd where the cable goes; no forms if that must not be told
 * @param code texts of the code, the fullest first
 * @param cable name of the cable's type
 * @param diameter of the cable
 */
public record CableWrap(
    String label,
    List<String> thisEnd,
    List<String> otherEnd,
    List<String> code,
    String cable,
    Optional<Length> diameter,
    Set<String> names,
    SourcePosition at)
    implements Label {
  public CableWrap {
    thisEnd = List.copyOf(thisEnd);
    otherEnd = List.copyOf(otherEnd);
    code = List.copyOf(code);
    names = Set.copyOf(names);
  }

  @Override
  public String title() {
    return label;
  }
}
