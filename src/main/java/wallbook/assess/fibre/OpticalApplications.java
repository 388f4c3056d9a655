package wallbook.assess.fibre;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import wallbook.quantity.Count;
import wallbook.quantity.DataRate;
import wallbook.record.FibreClass;
import wallbook.reference.Row;
import wallbook.reference.Tables;

/** The optical applications of the reference tables, in their order: slowest first. */
public final class OpticalApplications {
  private final List<OpticalApplication> all;

  public OpticalApplications(Tables tables) {
    List<Row> reaches = tables.table("optical-reaches").rows();
    all =
        tables.table("optical-applications").rows().stream()
            .map(row -> application(row, reaches))
            .toList();
  }

  public List<OpticalApplication> all() {
    return all;
  }

  /**
   * The application of the given name, for instance {@code 25GBASE-SR}.
   *
   * @throws NoSuchElementException if the tables have none
   */
  public OpticalApplication named(String name) {
    return all.stream().filter(a -> a.name().equals(name)).findFirst().orElseThrow();
  }

  private static OpticalApplication application(Row row, List<Row> reaches) {
    String name = row.text("application");
    Map<FibreClass, OpticalReach> byClass = new EnumMap<>(FibreClass.class);
    for (Row reach : reaches) {
      if (reach.text("application").equals(name)) {
        byClass.put(FibreClass.valueOf(reach.text("class")), OpticalReach.of(reach));
      }
    }
    return new OpticalApplication(
        name,
        DataRate.gigabitsPerSecond(row.number("rate_gbps")),
        Count.of((int) row.number("fibres")),
        byClass,
        row.source());
  }
}
