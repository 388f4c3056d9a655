package wallbook.fuzz;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A few changes to a record, each chosen by three numbers, so that any list of numbers is a
 * mutation. A change of the tree keeps the YAML sound and so comes further than one of a line.
 */
final class Mutation {
  /** Values that a reader may stumble over, whatever the key. */
  private static final List<String> ODD =
      List.of(
          "0 m",
          "-1 m",
          "1e9 m",
          "1e-9 mm",
          "0",
          "-1",
          "2147483647",
          "1e308",
          "NaN",
          "yes",
          "~",
          "''",
          "2026-02-30",
          "0001-01-01",
          "9999-12-31",
          "1 ft 13 in",
          "0 ohm",
          "1e6 dB",
          "-60 dB",
          "360 deg",
          "1 in",
          "300 °C",
          "<b>",
          "${x}",
          "\u202E",
          "a\u0301",
          "\uD83D\uDD0C",
          "A",
          "a");

  private static final List<String> SCALES =
      List.of("0", "0.000001", "0.1", "0.5", "2", "10", "1000", "1000000000");

  private Mutation() {}

  /** A change by three numbers from 0. */
  record Change(int kind, int where, int with) {}

  /** Puts each of the odd values somewhere. */
  static List<Change> oddValues() {
    return IntStream.range(0, ODD.size()).mapToObj(i -> new Change(1, 31 * i, i)).toList();
  }

  /** Changes lines of a text. */
  static String ofLines(String yaml, List<Change> changes) {
    List<String> lines = new ArrayList<>(yaml.lines().toList());
    for (Change change : changes) {
      int at = change.where() % lines.size();
      int other = change.with() % lines.size();
      String line = lines.get(at);
      switch (change.kind() % 9) {
        case 0 -> lines.remove(at);
        case 1 -> lines.add(at, lines.get(other));
        case 2 -> lines.set(at, line.substring(0, change.with() % (line.length() + 1)));
        case 3 -> lines.set(at, " ".repeat(change.with() % 5) + line);
        case 4 -> lines.set(at, line.replaceAll("\\d+", Integer.toString(change.with())));
        case 5 -> lines.set(at, token(line, change.with(), ODD.get(change.with() % ODD.size())));
        case 6 -> lines.set(at, token(line, change.with(), ""));
        case 7 -> lines.set(at, lines.get(other));
        default -> lines.set(at, character(line, change.with()));
      }
      if (lines.isEmpty()) {
        lines.add("");
      }
    }
    return String.join("\n", lines);
  }

  private static String token(String line, int which, String by) {
    String[] tokens = line.split("(?<=[,:\\[{ ])|(?=[,:\\]} ])");
    tokens[which % tokens.length] = by;
    return String.join("", tokens);
  }

  private static String character(String line, int with) {
    int at = with % (line.length() + 1);
    return line.substring(0, at) + (char) (with % 0x250) + line.substring(at);
  }

  /** Changes the tree of a record as a YAML library loads it: maps, lists and texts. */
  static void ofTree(Object root, List<Change> changes) {
    for (Change change : changes) {
      List<Slot> slots = new ArrayList<>();
      Map<String, List<Object>> byKey = new LinkedHashMap<>();
      collect(root, "", slots, byKey);
      if (slots.isEmpty()) {
        return;
      }
      Slot slot = slots.get(change.where() % slots.size());
      switch (change.kind() % 8) {
        case 0 -> slot.remove();
        case 1 -> slot.put(ODD.get(change.with() % ODD.size()));
        case 2, 3, 4 -> slot.put(pick(byKey.get(slot.key()), change.with()));
        case 5, 6 -> slot.put(scaled(slot.value(), SCALES.get(change.with() % SCALES.size())));
        default -> slot.repeat();
      }
    }
  }

  private static Object pick(List<Object> others, int which) {
    return others.get(which % others.size());
  }

  private static Object scaled(Object value, String factor) {
    if (value instanceof String text && text.matches("-?[0-9.]+ .*")) {
      String[] parts = text.split(" ", 2);
      return new BigDecimal(parts[0]).multiply(new BigDecimal(factor)).toPlainString()
          + " "
          + parts[1];
    }
    return factor;
  }

  private static void collect(
      Object node, String key, List<Slot> slots, Map<String, List<Object>> byKey) {
    if (node instanceof Map<?, ?> map) {
      for (Object each : map.keySet()) {
        String name = each.toString();
        slots.add(new Slot(node, name, 0));
        byKey.computeIfAbsent(name, k -> new ArrayList<>()).add(map.get(each));
        collect(map.get(each), name, slots, byKey);
      }
    } else if (node instanceof List<?> list) {
      String name = key + "[]";
      for (int i = 0; i < list.size(); i++) {
        slots.add(new Slot(node, name, i));
        byKey.computeIfAbsent(name, k -> new ArrayList<>()).add(list.get(i));
        collect(list.get(i), name, slots, byKey);
      }
    }
  }

  /** A place in the tree that holds a value. */
  private record Slot(Object holder, String key, int index) {
    @SuppressWarnings("unchecked") // maps and lists are made by Copies, which takes any value
    private Map<String, Object> map() {
      return (Map<String, Object>) holder;
    }

    @SuppressWarnings("unchecked") // as above
    private List<Object> list() {
      return (List<Object>) holder;
    }

    Object value() {
      return holder instanceof Map ? map().get(key) : list().get(index);
    }

    void put(Object value) {
      Object copy = copy(value);
      if (holder instanceof Map) {
        map().put(key, copy);
      } else {
        list().set(index, copy);
      }
    }

    void remove() {
      if (holder instanceof Map) {
        map().remove(key);
      } else {
        list().remove(index);
      }
    }

    /** Repeats an item of a list; a value of a map becomes a list of itself. */
    void repeat() {
      if (holder instanceof Map) {
        put(Arrays.asList(value(), value()));
      } else {
        list().add(copy(value()));
      }
    }
  }

  /** A copy that can be changed without changing the original; nothing becomes a tilde. */
  static Object copy(Object node) {
    if (node instanceof Map<?, ?> map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      map.forEach((key, value) -> copy.put(key.toString(), copy(value)));
      return copy;
    } else if (node instanceof List<?> list) {
      List<Object> copy = new ArrayList<>();
      list.forEach(item -> copy.add(copy(item)));
      return copy;
    }
    return node == null ? "~" : node;
  }
}
