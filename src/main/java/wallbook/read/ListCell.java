package wallbook.read;

import java.util.ArrayList;
import java.util.List;

/**
 * A list of plain values in one cell, parted by semicolons. An item that holds a semicolon or a
 * quote, or begins or ends with a blank, stands in double quotes; a quote within is doubled.
 */
final class ListCell {
  private ListCell() {}

  static String join(List<String> items) {
    return String.join("; ", items.stream().map(ListCell::quoted).toList());
  }

  private static String quoted(String item) {
    boolean plain = item.equals(item.strip()) && item.indexOf(';') < 0 && item.indexOf('"') < 0;
    return plain && !item.isEmpty() ? item : '"' + item.replace("\"", "\"\"") + '"';
  }

  /** The items; a quote that is never closed holds to the end. Empty items are left out. */
  static List<String> split(String cell) {
    List<String> items = new ArrayList<>();
    StringBuilder item = new StringBuilder();
    boolean within = false;
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (within && c == '"' && i + 1 < cell.length() && cell.charAt(i + 1) == '"') {
        item.append(c);
        i++;
      } else if (c == '"' && (within || item.toString().isBlank())) {
        within = !within;
        if (within) {
          item.setLength(0);
        }
      } else if (c == ';' && !within) {
        items.add(item.toString());
        item.setLength(0);
      } else {
        item.append(c);
      }
    }
    items.add(item.toString());
    return items.stream().map(String::strip).filter(s -> !s.isEmpty()).toList();
  }
}
