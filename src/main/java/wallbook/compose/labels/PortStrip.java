package wallbook.compose.labels;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.finding.SourcePosition;

/**
 * A strip for neighbouring ports of a panel, as seen from the front.
 *
 * @param title head, panel and ports
 * @param ports at most as many as the strip has cells
 */
public record PortStrip(String title, List<Port> ports, Set<String> names, SourcePosition at)
    implements Label {
  public PortStrip {
    ports = List.copyOf(ports);
    names =
        Stream.concat(names.stream(), ports.stream().flatMap(p -> p.label().stream()))
            .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * A port.
   *
   * @param number from 1
   * @param label label of the run behind it, if there is one
   * @param otherEnd where that run goes; no forms if that must not be told
   * @param at where the record says the label
   */
  public record Port(int number, Optional<String> label, List<String> otherEnd, SourcePosition at) {
    public Port {
      otherEnd = List.copyOf(otherEnd);
    }
  }
}
