package wallbook.assess.coax;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Loss from the input of a coaxial splitter to each of its outputs. */
public final class CoaxSplitters {
  private final Table table;

  public CoaxSplitters(Tables tables) {
    table = tables.table("coax-splitters");
  }

  /** Nominal loss as printed on splitters; empty for a number of ways that the table lacks. */
  public Optional<Decibels> nominalLoss(Count ways) {
    return table
        .find(Integer.toString(ways.number()))
        .map(row -> Decibels.decibels(row.number("loss_db")));
  }

  /** The numbers of ways that the table has, rising. */
  public List<Count> sizes() {
    return table.rows().stream().map(row -> Count.of((int) row.number("ways"))).toList();
  }
}
