package wallbook.assess.outlook;

import java.util.List;
import java.util.Locale;
import wallbook.reference.Row;
import wallbook.reference.Tables;

/**
 * A service that a cable or conduit could carry, from the table {@code outlook-services}.
 *
 * @param name stable name
 * @param topic the assessment that decides
 * @param rank usefulness, the greatest first
 * @param adds keys of what must be added
 * @param by who adds it
 */
record Service(
    String name, ServiceFamily family, String topic, int rank, List<String> adds, Worker by) {

  static List<Service> all(Tables tables) {
    return tables.table("outlook-services").rows().stream().map(Service::of).toList();
  }

  private static Service of(Row row) {
    return new Service(
        row.text("service"),
        ServiceFamily.valueOf(row.text("family").toUpperCase(Locale.ROOT)),
        row.text("topic"),
        (int) row.number("rank"),
        row.textIfAny("adds").map(t -> List.of(t.split(" "))).orElse(List.of()),
        Worker.valueOf(row.text("by").toUpperCase(Locale.ROOT)));
  }
}
