package wallbook.compose.drawing;

import java.util.List;
import java.util.Map;

/**
 * A patch panel, a splitter or a row of posts, port by port as somebody sees who stands in front of
 * it.
 *
 * @param heading what is written on the panel
 * @param rows from the top, each row from the left
 * @param stateWords what each state is called, with the letter that stands in the port
 */
public record PanelMap(
    Frame frame, String heading, List<List<Port>> rows, Map<PortState, StateWord> stateWords)
    implements Drawing {
  public PanelMap {
    rows = rows.stream().map(List::copyOf).toList();
    stateWords = Map.copyOf(stateWords);
    if (rows.stream().allMatch(List::isEmpty)) {
      throw new IllegalArgumentException("a panel has ports");
    }
    for (List<Port> row : rows) {
      for (Port port : row) {
        if (!stateWords.containsKey(port.state())) {
          throw new IllegalArgumentException("no word for the state " + port.state());
        }
      }
    }
  }

  /** What a port's run is good for today. */
  public enum PortState {
    IN_SERVICE,
    DARK,
    DAMAGED,
    FREE
  }

  /** The letter in the port and the word in the key. */
  public record StateWord(String letter, String word) {}

  /** One port: its number, and the label of the run behind it (no lines when it is free). */
  public record Port(String number, List<String> label, PortState state) {
    public Port {
      label = List.copyOf(label);
    }
  }
}
