package wallbook.read;

import java.util.List;
import java.util.SortedMap;
import wallbook.finding.SourcePosition;
import wallbook.read.CsvText.Cell;

/**
 * What a row of a schedule says, by dotted key; cells that say nothing are not among them.
 *
 * @param start where the row begins
 */
record Row(SortedMap<String, Cell> cells, SourcePosition start) {

  boolean has(String key) {
    return cells.containsKey(key);
  }

  String text(String key) {
    return cells.get(key).text();
  }

  /** Whether something is said of what lies within the thing at a key. */
  boolean hasWithin(String key) {
    return !within(key).isEmpty();
  }

  /** Where the value of a key, or the first within it, stands. */
  SourcePosition at(String key) {
    if (has(key)) {
      return cells.get(key).at();
    }
    SortedMap<String, Cell> inner = within(key);
    return inner.isEmpty() ? start : inner.get(inner.firstKey()).at();
  }

  /** Numbers of the items of the list at a key that something is said of, ascending. */
  List<Integer> numbers(String key) {
    return within(key).keySet().stream()
        .map(k -> k.substring(key.length() + 1).split("\\.", 2)[0])
        .map(Integer::valueOf)
        .distinct()
        .sorted()
        .toList();
  }

  private SortedMap<String, Cell> within(String key) {
    return cells.subMap(key + ".", key + "/");
  }
}
