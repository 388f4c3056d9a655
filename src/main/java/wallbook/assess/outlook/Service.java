package wallbook.assess.outlook;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * A service that a cable or conduit could carry, from the table {@code outlook-services}.
 *
 * @param name stable name
 * @param words the service in words
 * @param topic the assessment that decides
 * @param rank usefulness, the greatest first
 * @param adds what must be added, in words
 * @param by who adds it
 */
record Service(
    String name,
    Phrase words,
    ServiceFamily family,
    String topic,
    int rank,
    List<Phrase> adds,
    Worker by) {

  /** First word of its topic. */
  String medium() {
    return topic.substring(0, topic.indexOf('.'));
  }

  static List<Service> all(Tables tables) {
    return tables.table("outlook-services").rows().stream().map(Service::of).toList();
  }

  private static Service of(Row row) {
    return new Service(
        row.text("service"),
        Phrase.of("outlook.service." + row.text("service")),
        ServiceFamily.valueOf(row.text("family").toUpperCase(Locale.ROOT)),
        row.text("topic"),
        (int) row.number("rank"),
        row.textIfAny("adds").stream()
            .flatMap(keys -> Stream.of(keys.split(" ")))
            .map(key -> Phrase.of("outlook.add." + key))
            .toList(),
        Worker.valueOf(row.text("by").toUpperCase(Locale.ROOT)));
  }
}
