package wallbook.reference;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;

/**
 * A reference table: a head that says what it is and where from, and rows. Columns carry their unit
 * in their name ({@code reach_m}, {@code loss_db}).
 *
 * <p>Head entries: {@code title}, {@code source}, {@code status} (a {@link Standing}, the default
 * for every row), {@code key} (columns that together are unique) and {@code interpolation} are
 * required; {@code confirmed-by}, {@code note} and {@code increasing} (columns that never fall from
 * row to row within one value of the first key column) may follow. A column {@code status}
 * overrides the head's for its row, a column {@code source} likewise.
 */
public final class Table {
  private final String name;
  private final Map<String, String> head;
  private final Map<String, Integer> indices = new HashMap<>();
  private final List<Row> rows;
  private final Map<Object, Row> byKey = new HashMap<>();
  private final List<String> keyColumns;

  /**
   * @param rows cells of each row in the order of the columns
   */
  Table(String name, Map<String, String> head, List<String> columns, List<String[]> rows) {
    this.name = name;
    this.head = Map.copyOf(head);
    for (String column : columns) {
      indices.put(column, indices.size());
    }
    this.keyColumns = List.of(required("key").split("\\s*,\\s*"));
    required("title");
    required("source");
    required("interpolation");
    Standing.of(required("status"));
    this.rows = rows.stream().map(cells -> new Row(this, cells)).toList();
    Set<String> unknown = new HashSet<>(keyColumns);
    unknown.removeAll(columns);
    if (!unknown.isEmpty()) {
      throw broken("key names no column: " + unknown);
    }
    for (Row row : this.rows) {
      String[] key = keyColumns.stream().map(row::text).toArray(String[]::new);
      if (byKey.put(key(key), row) != null) {
        throw broken("two rows with key " + List.of(key));
      }
      row.source();
    }
    checkOrder();
  }

  public List<Row> rows() {
    return rows;
  }

  /** The table's name, that of its file without the ending. */
  public String name() {
    return name;
  }

  /** Source of the whole table, with the standing in its head. */
  public Source source() {
    return new Source(head.get("source"), Standing.of(head.get("status")));
  }

  /** An entry of the head, if it is there. */
  public Optional<String> head(String entry) {
    return Optional.ofNullable(head.get(entry));
  }

  /** The row with the given key values, in the order of the head's {@code key} entry. */
  public Optional<Row> find(String... key) {
    return Optional.ofNullable(byKey.get(key(key)));
  }

  /** What a row is kept under: most have a single value, and a text is found sooner than a list. */
  private static Object key(String... values) {
    return values.length == 1 ? values[0] : List.of(values);
  }

  /** Where a column stands, counted from 0; -1 if there is none of the name. */
  int index(String column) {
    Integer index = indices.get(column);
    return index == null ? -1 : index;
  }

  /**
   * The row with the given key values.
   *
   * @throws NoSuchElementException if there is none
   */
  public Row row(String... key) {
    return find(key)
        .orElseThrow(
            () -> new NoSuchElementException("table " + name + " has no row " + List.of(key)));
  }

  IllegalStateException broken(String why) {
    return new IllegalStateException("reference table " + name + ": " + why);
  }

  private String required(String entry) {
    String value = head.get(entry);
    if (value == null || value.isBlank()) {
      throw broken("head has no '" + entry + "'");
    }
    return value;
  }

  private void checkOrder() {
    for (String column : head("increasing").map(c -> c.split("\\s*,\\s*")).orElse(new String[0])) {
      for (int i = 1; i < rows.size(); i++) {
        Row before = rows.get(i - 1);
        Row row = rows.get(i);
        boolean sameGroup =
            keyColumns.size() == 1
                || before.text(keyColumns.get(0)).equals(row.text(keyColumns.get(0)));
        if (sameGroup && row.number(column) < before.number(column)) {
          throw broken(column + " falls at row " + (i + 1));
        }
      }
    }
  }
}
