package wallbook.check;

import java.time.Period;
import wallbook.quantity.Area;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Figures of the reference table {@code record-checks}. */
final class CheckFigures {
  private final Table table;

  CheckFigures(Tables tables) {
    this.table = tables.table("record-checks");
  }

  Length length(String figure) {
    return Length.inches(row(figure).number("length_in"));
  }

  Area area(String figure) {
    return Area.squareFeet(row(figure).number("area_sq_ft"));
  }

  Ratio share(String figure) {
    return Ratio.percent(row(figure).number("share_percent"));
  }

  Period period(String figure) {
    return Period.ofMonths((int) row(figure).number("months"));
  }

  int count(String figure) {
    return (int) row(figure).number("count");
  }

  private Row row(String figure) {
    return table.row(figure);
  }
}
