package wallbook.assess.copper;

import wallbook.quantity.Delay;
import wallbook.quantity.Frequency;
import wallbook.record.LinkConfiguration;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Limits of propagation delay and skew of balanced-pair links and channels. */
public final class DelayLimits {
  private final Table table;

  public DelayLimits(Tables tables) {
    table = tables.table("pair-dc-limits");
  }

  /**
   * Greatest propagation delay at a frequency: {@code k·(534 + 36/√f) + n·2.5} in ns, f in MHz; k
   * the share of 100 m of cable, n the number of connections (ANSI/TIA-568.2-D).
   */
  public Delay delay(LinkConfiguration configuration, Frequency frequency) {
    Row row = row(configuration);
    double cable =
        row.number("cable_ns") + row.number("cable_ns_root") / Math.sqrt(frequency.inMegahertz());
    return Delay.nanoseconds(
        row.number("factor") * cable + row.number("connections") * row.number("connection_ns"));
  }

  /** Greatest propagation delay at the frequency that a single figure is judged at. */
  public Delay delay(LinkConfiguration configuration) {
    return delay(configuration, judgedAt(configuration));
  }

  /** The frequency that a single figure of delay is judged at, 10 MHz. */
  public Frequency judgedAt(LinkConfiguration configuration) {
    return Frequency.megahertz(row(configuration).number("delay_mhz"));
  }

  /** Greatest difference of delay between the fastest and the slowest pair. */
  public Delay skew(LinkConfiguration configuration) {
    return Delay.nanoseconds(row(configuration).number("skew_ns"));
  }

  public Source source(LinkConfiguration configuration) {
    return row(configuration).source();
  }

  private Row row(LinkConfiguration configuration) {
    return table.row(configuration.word());
  }
}
