package wallbook.compose.drawing;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The whole house in one picture: floors as bands, heads in them with the runs that come home there
 * counted by group, and the trunks and conduits that tie heads together.
 *
 * @param bands from the top of the house down; what lies outdoors or at the street may be a band of
 *     its own
 */
public record OneLine(Frame frame, List<Band> bands, List<Link> links) implements Drawing {
  public OneLine {
    bands = List.copyOf(bands);
    links = List.copyOf(links);
    Set<String> ids = new HashSet<>();
    for (Band band : bands) {
      for (Node node : band.nodes()) {
        if (!ids.add(node.id())) {
          throw new IllegalArgumentException("two nodes have the id " + node.id());
        }
      }
    }
    for (Link link : links) {
      if (!ids.contains(link.from()) || !ids.contains(link.to())) {
        throw new IllegalArgumentException("a link ends nowhere: " + link);
      }
    }
    if (ids.isEmpty()) {
      throw new IllegalArgumentException("a one-line diagram needs a node");
    }
  }

  /** A floor. */
  public record Band(String name, List<Node> nodes) {
    public Band {
      nodes = List.copyOf(nodes);
    }
  }

  /** A rack, a structured panel, a demarcation point or an outdoor enclosure. */
  public record Node(String id, SymbolKind symbol, String name, List<Group> groups) {
    public Node {
      groups = List.copyOf(groups);
    }
  }

  /**
   * Runs of one kind that go from a node to one floor or area, counted: {@code count} as the reader
   * sees it.
   */
  public record Group(String count, String what) {}

  /** How a link is drawn. */
  public enum LinkKind {
    TRUNK,
    CONDUIT,
    SERVICE
  }

  /** A trunk, a conduit or a service line between two nodes. */
  public record Link(String from, String to, LinkKind kind, String label) {}
}
