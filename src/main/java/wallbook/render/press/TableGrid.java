package wallbook.render.press;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;

/** The rows and cells of a table in their places. */
final class TableGrid {
  private static final Pattern SPAN = Pattern.compile("[1-9]\\d{0,3}");

  private final Workshop shop;
  private final List<Row> head = new ArrayList<>(2);
  private final List<Row> body = new ArrayList<>();
  private final List<Row> foot = new ArrayList<>(0);
  private final List<Branch> columns = new ArrayList<>();
  private final List<Branch> captions = new ArrayList<>(0);
  private int[] open = new int[8];
  private int width;

  /**
   * A row.
   *
   * @param section the element that groups rows, or the table
   */
  record Row(Branch branch, Branch section, List<Cell> cells) {}

  /**
   * A cell.
   *
   * @param column its first, from 0
   * @param columns how many it goes over
   * @param rows how many it goes over
   */
  record Cell(Branch branch, int column, int columns, int rows) {
    BoxStyle box() {
      return branch.style().box();
    }
  }

  private TableGrid(Workshop shop) {
    this.shop = shop;
  }

  static TableGrid of(Workshop shop, Branch table) throws StyleProblem {
    TableGrid grid = new TableGrid(shop);
    grid.read(table, table, grid.body);
    return grid;
  }

  private void read(Branch around, Branch section, List<Row> rows) throws StyleProblem {
    for (Object node : shop.nodes(around)) {
      if (!(node instanceof Branch branch)) {
        continue;
      }
      switch (branch.style().display()) {
        case TABLE_HEADER_GROUP -> section(branch, head);
        case TABLE_ROW_GROUP -> section(branch, body);
        case TABLE_FOOTER_GROUP -> section(branch, foot);
        case TABLE_ROW -> row(branch, section, rows);
        case TABLE_COLUMN_GROUP -> read(branch, section, rows);
        case TABLE_COLUMN -> columns.add(branch);
        case TABLE_CAPTION -> captions.add(branch);
        default -> {}
      }
    }
  }

  private void section(Branch section, List<Row> rows) throws StyleProblem {
    open = new int[Math.max(8, width)];
    read(section, section, rows);
  }

  private void row(Branch branch, Branch section, List<Row> rows) throws StyleProblem {
    List<Object> nodes = shop.nodes(branch);
    List<Cell> cells = new ArrayList<>(nodes.size());
    int column = 0;
    for (Object node : nodes) {
      if (!(node instanceof Branch cell) || cell.style().display() != Keywords.Display.TABLE_CELL) {
        continue;
      }
      while (column < open.length && open[column] > 0) {
        column++;
      }
      int over = span(cell.element(), "colspan");
      int down = span(cell.element(), "rowspan");
      cells.add(new Cell(cell, column, over, down));
      if (down > 1) {
        open = Arrays.copyOf(open, Math.max(open.length, column + over));
        for (int i = column; i < column + over; i++) {
          open[i] = down;
        }
      }
      column += over;
    }
    width = Math.max(width, column);
    for (int i = 0; i < open.length; i++) {
      open[i] = Math.max(0, open[i] - 1);
    }
    rows.add(new Row(branch, section, cells));
  }

  private static int span(Element cell, String name) {
    String text = cell.attr(name);
    return !text.isEmpty() && SPAN.matcher(text).matches() ? Integer.parseInt(text) : 1;
  }

  List<Row> head() {
    return head;
  }

  /** The rows below the head, those of the foot last. */
  List<Row> body() {
    if (foot.isEmpty()) {
      return body;
    }
    List<Row> all = new ArrayList<>(body);
    all.addAll(foot);
    return all;
  }

  List<Branch> captions() {
    return captions;
  }

  /** How many columns it has. */
  int width() {
    return Math.max(width, columns.size());
  }

  /** The width that the table's {@code col} elements give a column, else that of its first cell. */
  Length givenWidth(int column) {
    if (column < columns.size() && !columns.get(column).style().box().width().auto()) {
      return columns.get(column).style().box().width();
    }
    List<Row> rows = head.isEmpty() ? body : head;
    if (!rows.isEmpty()) {
      for (Cell cell : rows.get(0).cells()) {
        if (cell.column() == column && cell.columns() == 1) {
          return cell.box().width();
        }
      }
    }
    return Length.AUTO;
  }
}
