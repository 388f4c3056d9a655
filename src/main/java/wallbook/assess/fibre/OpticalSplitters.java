package wallbook.assess.fibre;

import java.util.Optional;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Loss of the splitters in a provider's passive optical network. */
public final class OpticalSplitters {
  private final Table table;

  public OpticalSplitters(Tables tables) {
    table = tables.table("optical-splitters");
  }

  /** Loss of a splitter that wastes nothing: {@code 10·log10 N}. */
  public static Decibels idealLoss(Count ways) {
    return Decibels.decibels(10 * Math.log10(ways.number()));
  }

  /** Largest loss of a planar splitter; empty for a number of ways that the table lacks. */
  public Optional<Decibels> mostLoss(Count ways) {
    return table
        .find(Integer.toString(ways.number()))
        .map(row -> Decibels.decibels(row.number("max_loss_db")));
  }

  /** The splitter of most ways that loses at most the given amount. */
  public Optional<Count> largestWithin(Decibels loss) {
    Optional<Count> largest = Optional.empty();
    for (Row row : table.rows()) {
      if (row.number("max_loss_db") <= loss.inDecibels()) {
        largest = Optional.of(Count.of((int) row.number("ways")));
      }
    }
    return largest;
  }
}
