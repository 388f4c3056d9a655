package wallbook.reference;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One row of a {@link Table}. A cell that is empty is absent; a cell asked for under a name that is
 * no column, or a number that is none, is a broken table and throws {@link IllegalStateException}
 * naming the table.
 */
public final class Row {
  private final Table table;
  private final Map<String, String> cells;
  private volatile Source source;
  private final Map<String, OptionalDouble> numbers = new ConcurrentHashMap<>();

  Row(Table table, Map<String, String> cells) {
    this.table = table;
    this.cells = Map.copyOf(cells);
  }

  /** Text of a cell; empty if the cell is. */
  public String text(String column) {
    String cell = cells.get(column);
    if (cell == null) {
      throw table.broken("no column " + column);
    }
    return cell;
  }

  public Optional<String> textIfAny(String column) {
    return Optional.of(text(column)).filter(t -> !t.isEmpty());
  }

  /** Number of a cell, in the unit that the column's name says. */
  public double number(String column) {
    return numberIfAny(column)
        .orElseThrow(() -> table.broken("empty cell in " + column + " of " + cells));
  }

  public OptionalDouble numberIfAny(String column) {
    OptionalDouble known = numbers.get(column);
    return known == null ? numbers.computeIfAbsent(column, this::readNumber) : known;
  }

  private OptionalDouble readNumber(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Double.parseDouble(text));
    } catch (NumberFormatException e) {
      throw table.broken("not a number in " + column + ": " + text);
    }
  }

  /** Whether a cell says {@code yes}; {@code no} and empty are false. */
  public boolean yes(String column) {
    String text = text(column);
    if (!text.isEmpty() && !text.equals("yes") && !text.equals("no")) {
      throw table.broken("neither yes nor no in " + column + ": " + text);
    }
    return text.equals("yes");
  }

  /** Source of this row: the head's, unless the row has a {@code source} or {@code status} cell. */
  public Source source() {
    Source known = source;
    if (known == null) {
      known = readSource();
      source = known;
    }
    return known;
  }

  private Source readSource() {
    String citation = cells.getOrDefault("source", "");
    String status = cells.getOrDefault("status", "");
    return new Source(
        citation.isEmpty() ? table.source().citation() : citation,
        status.isEmpty() ? table.source().standing() : Standing.of(status));
  }
}
