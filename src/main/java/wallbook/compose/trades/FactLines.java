package wallbook.compose.trades;

import java.util.List;

/** A fact with its name and a line for each thing to be said. */
public record FactLines(String name, List<String> lines) {
  public FactLines {
    lines = List.copyOf(lines);
  }
}
