package wallbook.assess.copper;

import java.util.Optional;
import java.util.OptionalDouble;
import wallbook.record.LinkConfiguration;
import wallbook.record.SweepPoint;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * The cases in which a measured value cannot fail: on a short link the instrument sees its own
 * connectors, and far-end crosstalk sinks into its noise.
 */
final class SmallLossRules {
  private final Table table;

  SmallLossRules(Tables tables) {
    table = tables.table("pair-small-loss");
  }

  /**
   * Whether a point cannot fail. Of two pairs the one counts that makes the point fail sooner; with
   * no insertion loss measured near the frequency, no point is free.
   */
  boolean free(SweepPoint point, LinkConfiguration configuration, LossCurves losses) {
    Optional<Row> rule = table.find(configuration.word(), point.parameter().word());
    if (rule.isEmpty()) {
      return false;
    }
    double threshold = rule.get().number("threshold_db");
    if (rule.get().text("basis").equals("insertion_loss")) {
      OptionalDouble greatest = losses.greatest(point);
      return greatest.isPresent() && greatest.getAsDouble() < threshold;
    }
    OptionalDouble least = losses.least(point);
    return least.isPresent() && point.valueInDecibels() + least.getAsDouble() > threshold;
  }
}
