package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;

/**
 * One or more conduits from a target homewards, each joined to the next in a space where both end
 * open.
 *
 * @param conduits at least one, the one at the target first
 * @param near end of the first that is at the target
 * @param far end of the last
 * @param crossed ids of the spaces between conduits
 */
record ConduitRoute(List<Conduit> conduits, ConduitEnd near, ConduitEnd far, List<String> crossed) {
  ConduitRoute {
    conduits = List.copyOf(conduits);
    crossed = List.copyOf(crossed);
  }

  static ConduitRoute from(Conduit conduit, ConduitEnd near) {
    return new ConduitRoute(List.of(conduit), near, conduit.otherThan(near), List.of());
  }

  /** The route with a further conduit that begins in the space where this one ends. */
  ConduitRoute then(Conduit conduit, ConduitEnd joined) {
    List<Conduit> more = new ArrayList<>(conduits);
    more.add(conduit);
    List<String> spaces = new ArrayList<>(crossed);
    spaces.add(joined.space().orElseThrow());
    return new ConduitRoute(more, near, conduit.otherThan(joined), spaces);
  }

  Optional<String> openIn() {
    return far.space();
  }
}
