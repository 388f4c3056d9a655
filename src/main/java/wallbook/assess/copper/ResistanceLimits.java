package wallbook.assess.copper;

import wallbook.quantity.Resistance;
import wallbook.record.LinkConfiguration;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Limits of direct-current resistance of balanced-pair links and channels at 20 °C. */
public final class ResistanceLimits {
  private final Table table;

  public ResistanceLimits(Tables tables) {
    table = tables.table("pair-dc-limits");
  }

  /** Greatest loop resistance of one pair: there over one conductor, back over the other. */
  public Resistance loop(LinkConfiguration configuration) {
    return Resistance.ohms(row(configuration).number("loop_ohm"));
  }

  /**
   * Greatest difference between the two conductors of a pair: {@code max(u·(R1 + R2), u0)} with u 3
   * % and u0 0.15 Ω (permanent link) or 0.2 Ω (channel); the sum of the conductors is the loop.
   */
  public Resistance unbalance(LinkConfiguration configuration, Resistance loop) {
    Row row = row(configuration);
    double share = row.number("unbalance_percent") / 100 * loop.inOhms();
    return Resistance.ohms(Math.max(share, row.number("unbalance_ohm")));
  }

  public Source source(LinkConfiguration configuration) {
    return row(configuration).source();
  }

  private Row row(LinkConfiguration configuration) {
    return table.row(configuration.word());
  }
}
