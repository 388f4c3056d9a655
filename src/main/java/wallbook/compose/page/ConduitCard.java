package wallbook.compose.page;

import java.util.List;
import java.util.Optional;
import wallbook.compose.FactView;

/**
 * One conduit.
 *
 * @param contents cables that lie in it and that the reader is told of
 * @param carries what more it could take
 */
public record ConduitCard(
    String anchor,
    String label,
    String name,
    Sign state,
    List<Ref> ends,
    List<FactView> facts,
    List<Link> contents,
    Optional<String> withheld,
    List<CarryView> carries,
    Optional<String> note) {
  public ConduitCard {
    ends = List.copyOf(ends);
    facts = List.copyOf(facts);
    contents = List.copyOf(contents);
    carries = List.copyOf(carries);
  }
}
