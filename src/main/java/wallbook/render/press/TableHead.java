package wallbook.render.press;

import java.util.List;

/** The rows at the head of a table, tagged where they first stand and repeated on each page. */
final class TableHead implements Body {
  private final List<TableRow> rows;
  private final float height;
  private boolean written;

  TableHead(List<TableRow> rows) {
    this.rows = List.copyOf(rows);
    float sum = 0;
    for (TableRow row : rows) {
      sum += row.height();
    }
    this.height = sum;
  }

  @Override
  public float height() {
    return height;
  }

  @Override
  public void ground(Sheet sheet, float x, float y) {
    float at = y;
    for (TableRow row : rows) {
      row.ground(sheet, x, at);
      at += row.height();
    }
  }

  @Override
  public void ink(Sheet sheet, float x, float y) {
    boolean again = written;
    written = true;
    if (again) {
      sheet.beginRepeated();
    }
    float at = y;
    for (TableRow row : rows) {
      row.ink(sheet, x, at);
      at += row.height();
    }
    if (again) {
      sheet.endRepeated();
    }
  }
}
