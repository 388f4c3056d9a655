package wallbook.assess.lowvoltage;

import wallbook.quantity.Ratio;
import wallbook.reference.Row;
import wallbook.reference.Source;

/**
 * A voltage drop that feeds are judged by.
 *
 * @param name in topics: {@code 10-percent}
 * @param share of the supply that may be lost
 */
record DropLimit(String name, Ratio share, Source source) {

  /** The limit of a row of the reference table {@code dc-drop-limits}. */
  static DropLimit of(Row row) {
    return new DropLimit(
        row.text("limit"), Ratio.percent(row.number("drop_percent")), row.source());
  }
}
