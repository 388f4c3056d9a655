package wallbook.compose.labels;

import java.util.List;
import java.util.Set;
import wallbook.finding.SourcePosition;

/**
 * The tag of one end of a conduit.
 *
 * @param label the conduit's label
 * @param state whether it was proved and its condition, in a few words
 * @param facts kind, size, pull string
 * @param code texts of the code, the fullest first
 */
public record ConduitTag(
    String label,
    List<String> thisEnd,
    List<String> otherEnd,
    String state,
    List<String> facts,
    List<String> code,
    Set<String> names,
    SourcePosition at)
    implements Label {
  public ConduitTag {
    thisEnd = List.copyOf(thisEnd);
    otherEnd = List.copyOf(otherEnd);
    facts = List.copyOf(facts);
    code = List.copyOf(code);
    names = Set.copyOf(names);
  }

  @Override
  public String title() {
    return label;
  }
}
