package wallbook.assess.copper;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.DataRate;
import wallbook.quantity.Length;
import wallbook.reference.Row;
import wallbook.reference.Source;

/**
 * An Ethernet application over balanced pairs on cabling of one category.
 *
 * @param key name in topics
 * @param name as the standard writes it
 * @param pairs pairs it needs, by their pins
 * @param category word of the category that the row is for
 * @param reach channel that is supported whatever the surroundings
 * @param conditionalReach longest channel that is supported on the condition
 * @param condition name of the condition
 */
record EthernetApplication(
    String key,
    String name,
    DataRate rate,
    List<String> pairs,
    String category,
    boolean screenedOnly,
    Optional<Length> reach,
    Optional<Length> conditionalReach,
    Optional<String> condition,
    Source source) {
  EthernetApplication {
    pairs = List.copyOf(pairs);
  }

  static EthernetApplication of(Row row) {
    return new EthernetApplication(
        row.text("application"),
        row.text("name"),
        DataRate.megabitsPerSecond(row.number("rate_mbps")),
        List.of(row.text("pins").split(" ")),
        row.text("category"),
        row.yes("screened"),
        metres(row, "reach_m"),
        metres(row, "conditional_m"),
        row.textIfAny("condition"),
        row.source());
  }

  private static Optional<Length> metres(Row row, String column) {
    return row.numberIfAny(column).stream().mapToObj(Length::metres).findFirst();
  }
}
