package wallbook.assess.fibre;

import java.util.Optional;
import wallbook.quantity.Length;
import wallbook.record.Cable;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * Least bend radius of fibre cable: 25 mm at rest and 50 mm under load for indoor cable of 2 to 4
 * fibres, else so many outer diameters. The data sheet's figure at rest goes before the rule.
 */
public final class BendRule {
  private final Table table;

  public BendRule(Tables tables) {
    table = tables.table("fibre-handling");
  }

  /** Least radius once installed; empty if a diameter is needed and not known. */
  public Optional<Length> atRest(Cable cable) {
    return cable.bendRadius().or(() -> radius(cable, "at_rest"));
  }

  /** Least radius while the cable is being pulled, never below that at rest; empty likewise. */
  public Optional<Length> underLoad(Cable cable) {
    return radius(cable, "under_load")
        .map(
            rule -> {
              Length sheet = cable.bendRadius().orElse(rule);
              return sheet.compareTo(rule) > 0 ? sheet : rule;
            });
  }

  /** Source of the rule that applies to a cable. */
  public Source source(Cable cable) {
    return row(cable).source();
  }

  private Optional<Length> radius(Cable cable, String state) {
    Row row = row(cable);
    return row.textIfAny(state + "_mm").isPresent()
        ? Optional.of(Length.millimetres(row.number(state + "_mm")))
        : cable.diameter().map(d -> d.times(row.number(state + "_diameters")));
  }

  private Row row(Cable cable) {
    if (!cable.outdoor().isEmpty()) {
      return table.row("outside-plant");
    }
    Row small = table.row("small-premises");
    boolean few = cable.fibres().filter(n -> n <= small.number("most_fibres")).isPresent();
    return few ? small : table.row(cable.fibres().isPresent() ? "other-indoor" : "by-rule");
  }
}
