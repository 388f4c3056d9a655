package wallbook.compose.drawing;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The symbols of one sheet and what they mean.
 *
 * @param note says that the symbols are this package's own
 */
public record Legend(Frame frame, List<Entry> entries, String note) implements Drawing {
  public Legend {
    entries = List.copyOf(entries);
    if (entries.isEmpty()) {
      throw new IllegalArgumentException("a legend without symbols");
    }
  }

  /** One symbol and its meaning. */
  public record Entry(SymbolKind symbol, String meaning) {}

  /** A legend of the symbols used, each once, in the order of {@link SymbolKind}. */
  public static Legend of(
      Frame frame, Collection<SymbolKind> used, Function<SymbolKind, String> meaning, String note) {
    return new Legend(
        frame,
        new TreeSet<>(used).stream().map(kind -> new Entry(kind, meaning.apply(kind))).toList(),
        note);
  }
}
