package wallbook.assess.copper;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.record.PairCategory;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** The Ethernet applications over balanced pairs, in rising order of rate. */
final class EthernetApplications {
  /** Each by rising category, the unscreened before the screened. */
  private final Map<String, List<EthernetApplication>> byKey;

  private final Table categories;

  EthernetApplications(Tables tables) {
    categories = tables.table("pair-categories");
    byKey =
        tables.table("ethernet-applications").rows().stream()
            .map(EthernetApplication::of)
            .sorted(
                Comparator.comparing(EthernetApplication::rate)
                    .thenComparingDouble(a -> rank(a.category()))
                    .thenComparing(EthernetApplication::screenedOnly))
            .collect(
                Collectors.groupingBy(
                    EthernetApplication::key, LinkedHashMap::new, Collectors.toList()));
  }

  /** Names of the applications, the slowest first. */
  List<String> keys() {
    return List.copyOf(byKey.keySet());
  }

  /** The application on the least cabling that carries it. */
  EthernetApplication least(String key) {
    return byKey.get(key).get(0);
  }

  /** The application on cabling of a category; empty if the category is too low. */
  Optional<EthernetApplication> on(String key, PairCategory category, boolean screened) {
    Optional<EthernetApplication> highest = Optional.empty();
    double most = rank(category.word());
    for (EthernetApplication application : byKey.get(key)) {
      if (rank(application.category()) <= most && (screened || !application.screenedOnly())) {
        highest = Optional.of(application);
      }
    }
    return highest;
  }

  private double rank(String category) {
    return categories.row(category).number("rank");
  }
}
