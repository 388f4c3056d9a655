package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wallbook.record.RunTest;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Judges a wire map pin by pin against the pairs of the eight-position jack. */
final class WireMap {
  private static final String OPEN = "open";
  private static final int PINS = 8;

  private final Table pairs;

  WireMap(Tables tables) {
    pairs = tables.table("pair-pins");
  }

  Source source() {
    return pairs.source();
  }

  /** Names of the pairs, by their pins. */
  List<String> pairs() {
    return pairs.rows().stream().map(row -> row.text("pair")).toList();
  }

  /** Whether the test says anything of single pins. */
  static boolean isIn(RunTest test) {
    return !(test.wireMap().isEmpty() && test.shorts().isEmpty() && test.splitPairs().isEmpty());
  }

  /** The faults found; empty if what is recorded cannot be read as a map of eight pins. */
  Optional<List<WireFault>> faults(RunTest test) {
    List<WireFault> faults = new ArrayList<>();
    if (!test.wireMap().isEmpty()) {
      Optional<Map<Integer, Integer>> reached = reached(test.wireMap());
      if (reached.isEmpty()) {
        return Optional.empty();
      }
      faults.addAll(misconnections(reached.get()));
    }
    for (String joined : test.shorts()) {
      faults.add(new WireFault(WireFault.Kind.SHORT, joined, pairsOfPins(joined)));
    }
    for (String split : test.splitPairs()) {
      faults.add(new WireFault(WireFault.Kind.SPLIT, split, namedPairs(split)));
    }
    return Optional.of(List.copyOf(faults));
  }

  /** Far pin by near pin, without the open ones. */
  private static Optional<Map<Integer, Integer>> reached(List<String> wireMap) {
    if (wireMap.size() != PINS) {
      return Optional.empty();
    }
    Map<Integer, Integer> reached = new TreeMap<>();
    for (int pin = 1; pin <= PINS; pin++) {
      String far = wireMap.get(pin - 1).strip().toLowerCase(Locale.ROOT);
      if (isPin(far)) {
        reached.put(pin, Integer.valueOf(far));
      } else if (!far.equals(OPEN)) {
        return Optional.empty();
      }
    }
    return Optional.of(reached);
  }

  private static boolean isPin(String text) {
    return text.length() == 1 && text.charAt(0) >= '1' && text.charAt(0) <= '0' + PINS;
  }

  private List<WireFault> misconnections(Map<Integer, Integer> reached) {
    List<WireFault> faults = new ArrayList<>();
    Set<Set<String>> crossed = new HashSet<>();
    for (Row pair : pairs.rows()) {
      String name = pair.text("pair");
      List<Integer> pins = pins(pair);
      List<Integer> far = pins.stream().map(reached::get).toList();
      if (far.contains(null)) {
        pins.stream()
            .filter(pin -> !reached.containsKey(pin))
            .map(pin -> new WireFault(WireFault.Kind.OPEN, pin.toString(), Set.of(name)))
            .forEach(faults::add);
      } else if (!far.equals(pins)) {
        Optional<String> other = pairOn(far);
        if (other.isEmpty()) {
          String where = text(pins) + " → " + text(far);
          Set<String> touched = new LinkedHashSet<>(pairsOfPins(text(far)));
          touched.add(name);
          faults.add(new WireFault(WireFault.Kind.MISWIRED, where, touched));
        } else if (other.get().equals(name)) {
          faults.add(new WireFault(WireFault.Kind.REVERSED, name, Set.of(name)));
        } else if (crossed.add(Set.of(name, other.get()))) {
          String where = name + "/" + other.get();
          faults.add(new WireFault(WireFault.Kind.CROSSED, where, Set.of(name, other.get())));
        }
      }
    }
    return faults;
  }

  /** The pair whose two pins these are, in either order. */
  private Optional<String> pairOn(List<Integer> pins) {
    return pairs.rows().stream()
        .filter(row -> Set.copyOf(pins(row)).equals(new HashSet<>(pins)))
        .map(row -> row.text("pair"))
        .findFirst();
  }

  private static List<Integer> pins(Row pair) {
    return List.of((int) pair.number("first"), (int) pair.number("second"));
  }

  private static String text(List<Integer> pins) {
    return pins.stream().map(String::valueOf).collect(Collectors.joining("-"));
  }

  /** Pairs that pins written as {@code 3-6} belong to. */
  private Set<String> pairsOfPins(String joined) {
    Set<String> touched = new LinkedHashSet<>();
    for (Row pair : pairs.rows()) {
      if (pins(pair).stream().anyMatch(pin -> joined.contains(pin.toString()))) {
        touched.add(pair.text("pair"));
      }
    }
    return touched;
  }

  /** Pairs written as {@code 36-45}; all of them if none can be told. */
  private Set<String> namedPairs(String split) {
    Set<String> named = new LinkedHashSet<>(pairs());
    named.removeIf(pair -> !split.contains(pair));
    return named.isEmpty() ? Set.copyOf(pairs()) : named;
  }
}
