package wallbook.compose.drawing;

import java.util.List;

/**
 * A place drawn in a plan.
 *
 * @param label one line or more; a line too long for the drawing is broken
 */
public record Mark(SymbolKind symbol, Spot spot, List<String> label) {
  public Mark {
    label = List.copyOf(label);
    if (label.isEmpty()) {
      throw new IllegalArgumentException("a mark needs a label");
    }
  }
}
