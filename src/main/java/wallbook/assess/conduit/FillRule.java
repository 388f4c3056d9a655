package wallbook.assess.conduit;

import java.util.NavigableMap;
import java.util.TreeMap;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * A rule for the share of a bore that cables may fill, by their number; from the reference table
 * {@code conduit-fill-limits}.
 */
public final class FillRule {
  private static final String TABLE = "conduit-fill-limits";

  private final String name;
  private final NavigableMap<Integer, Ratio> limitFrom = new TreeMap<>();
  private final Source source;

  private FillRule(Tables tables, String name) {
    this.name = name;
    Table table = tables.table(TABLE);
    for (Row row : table.rows()) {
      if (row.text("rule").equals(name)) {
        limitFrom.put((int) row.number("cables"), Ratio.percent(row.number("percent")));
      }
    }
    this.source = table.row(name, "1").source();
  }

  /** NEC chapter 9 table 1: one share for one cable, another for two, a third for more. */
  public static FillRule table1(Tables tables) {
    return new FillRule(tables, "table-1");
  }

  /** The share of a nipple, whatever the number (NEC chapter 9 table 1 note 4). */
  public static FillRule nipple(Tables tables) {
    return new FillRule(tables, "nipple");
  }

  /** Length up to which a conduit is a nipple. */
  public static Length longestNipple(Tables tables) {
    return Length.inches(tables.table(TABLE).row("nipple", "1").number("longest_in"));
  }

  /** Cabling practice: one share, whatever the number. */
  public static FillRule flat(Tables tables) {
    return new FillRule(tables, "flat-40");
  }

  /** Name of the rule in the table. */
  public String name() {
    return name;
  }

  /**
   * Largest share for a number of cables.
   *
   * @param cables all cables together, at least 1
   */
  public Ratio limit(int cables) {
    if (cables < 1) {
      throw new IllegalArgumentException("no limit of fill for " + cables + " cables");
    }
    return limitFrom.floorEntry(cables).getValue();
  }

  /** Number of cables from which on the share is the same for any number. */
  public int sameFrom() {
    return limitFrom.lastKey();
  }

  public Source source() {
    return source;
  }
}
