package wallbook.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of a {@link Table}. A cell that is empty is absent; a cell asked for under a name that is
 * no column, or a number that is none, is a broken table and throws {@link IllegalStateException}
 * naming the table.
 */
public final class Row {
  private final Table table;
  private final String[] cells;
  private final OptionalDouble[] numbers;
  private volatile Source source;

  /**
   * @param cells in the order of the table's columns
   */
  Row(Table table, String... cells) {
    this.table = table;
    this.cells = cells.clone();
    this.numbers = new OptionalDouble[cells.length];
  }

  /** Text of a cell; empty if the cell is. */
  public String text(String column) {
    return cells[index(column)];
  }

  public Optional<String> textIfAny(String column) {
    return Optional.of(text(column)).filter(t -> !t.isEmpty());
  }

  /** Number of a cell, in the unit that the column's name says. */
  public double number(String column) {
    OptionalDouble number = numberIfAny(column);
    if (number.isEmpty()) {
      throw table.broken("empty cell in " + column + " of " + List.of(cells));
    }
    return number.getAsDouble();
  }

  public OptionalDouble numberIfAny(String column) {
    int index = index(column);
    OptionalDouble known = numbers[index];
    if (known == null) {
      // Read twice by two threads it is the same number.
      known = readNumber(column, cells[index]);
      numbers[index] = known;
    }
    return known;
  }

  private int index(String column) {
    int index = table.index(column);
    if (index < 0) {
      throw table.broken("no column " + column);
    }
    return index;
  }

  private OptionalDouble readNumber(String column, String text) {
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

  private String cellIfColumn(String column) {
    int index = table.index(column);
    return index < 0 ? "" : cells[index];
  }

  private Source readSource() {
    String citation = cellIfColumn("source");
    String status = cellIfColumn("status");
    return new Source(
        citation.isEmpty() ? table.source().citation() : citation,
        status.isEmpty() ? table.source().standing() : Standing.of(status));
  }
}
