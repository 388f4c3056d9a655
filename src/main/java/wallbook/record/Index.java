package wallbook.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Things of a record by their id; of two with the same id the later. Keeps their order. */
final class Index<T> {
  private final Map<String, T> byId = new LinkedHashMap<>();

  Index(Collection<? extends T> things, Function<T, String> id) {
    things.forEach(thing -> byId.put(id.apply(thing), thing));
  }

  /**
   * The thing of an id.
   *
   * @throws IllegalArgumentException if there is none
   */
  T get(String id) {
    return find(id)
        .orElseThrow(() -> new IllegalArgumentException("nothing has the id '" + id + "'"));
  }

  Optional<T> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  Collection<T> all() {
    return byId.values();
  }

  /** Things in groups, by every key that each has; in a group they keep their order. */
  static <T> Map<String, List<T>> groups(List<T> things, Function<T, List<String>> keys) {
    Map<String, List<T>> groups = new HashMap<>();
    for (T thing : things) {
      for (String key : keys.apply(thing)) {
        groups.computeIfAbsent(key, k -> new ArrayList<>()).add(thing);
      }
    }
    groups.replaceAll((key, list) -> List.copyOf(list));
    return groups;
  }
}
