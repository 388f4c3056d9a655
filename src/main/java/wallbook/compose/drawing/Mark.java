package wallbook.compose.drawing;

import java.util.List;
import java.util.Optional;

/**
 * A place drawn in a plan.
 *
 * @param label one line or more; a line too long for the drawing is broken
 * @param target where a touch leads
 */
public record Mark(SymbolKind symbol, Spot spot, List<String> label, Optional<Target> target) {
  public Mark {
    label = List.copyOf(label);
    if (label.isEmpty()) {
      throw new IllegalArgumentException("a mark needs a label");
    }
  }

  /** A mark that leads nowhere. */
  public Mark(SymbolKind symbol, Spot spot, List<String> label) {
    this(symbol, spot, label, Optional.empty());
  }
}
