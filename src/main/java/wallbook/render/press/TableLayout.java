package wallbook.render.press;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wallbook.render.Tag;

/**
 * Lays a table out row by row. Head and first two rows stay together, and the last row doesn't
 * stand alone if that can be helped. Lengths are in points.
 */
final class TableLayout {
  private final BlockLayout around;
  private final Branch branch;
  private final Tag tag;
  private final boolean collapses;
  private final Map<Branch, Tag> sections = new HashMap<>(4);
  private TableGrid grid;
  private float[] edges;

  TableLayout(BlockLayout around, Branch branch, Tag parent) {
    this.around = around;
    this.branch = branch;
    this.tag = around.shop().tagger().block(branch.element(), parent);
    this.collapses = branch.style().block().collapses();
  }

  void lay(float left, float width) throws StyleProblem {
    grid = TableGrid.of(around.shop(), branch);
    BoxStyle box = branch.style().box();
    Flow flow = around.flow();
    for (Branch caption : grid.captions()) {
      around.block(caption, tag, left, width);
      flow.bind(Slice.LED);
    }
    if (grid.width() == 0) {
      return;
    }
    Decor decor = box.isSeen() ? new Decor(box, left, width) : null;
    float inLeft = box.inset(BoxStyle.LEFT, width);
    float inner = width - inLeft - box.inset(BoxStyle.RIGHT, width);
    edges = edges(widths(inner));
    if (decor != null) {
      flow.open(decor, box.inset(BoxStyle.TOP, width));
    }
    List<TableGrid.Row> body = grid.body();
    TableHead head = null;
    if (!grid.head().isEmpty()) {
      head = new TableHead(rows(grid.head(), 0, grid.head().size(), null, first(body)));
    }
    TableGrid.Row before = grid.head().isEmpty() ? null : grid.head().get(grid.head().size() - 1);
    if (body.isEmpty() && head != null) {
      flow.add(head, left + inLeft);
    }
    lay(body, before, head, left + inLeft);
    if (decor != null) {
      flow.close(decor, box.inset(BoxStyle.BOTTOM, width));
    }
  }

  private static TableGrid.Row first(List<TableGrid.Row> rows) {
    return rows.isEmpty() ? null : rows.get(0);
  }

  private void lay(List<TableGrid.Row> body, TableGrid.Row above, TableHead head, float left)
      throws StyleProblem {
    Flow flow = around.flow();
    TableGrid.Row before = above;
    int count = body.size();
    for (int from = 0; from < count; ) {
      int to = groupEnd(body, from);
      List<TableRow> rows = rows(body, from, to, before, to < count ? body.get(to) : null);
      for (int i = 0; i < rows.size(); i++) {
        int number = from + i;
        if (number == 1) {
          flow.bind(Slice.LED);
        } else if (i > 0) {
          flow.bind(Slice.INSIDE);
        } else if (number == count - 1 && number > 0) {
          flow.bind(Slice.LAST_ROW);
        }
        add(rows.get(i), head, number == 0 && head != null, left);
      }
      before = body.get(to - 1);
      from = to;
    }
  }

  private void add(TableRow row, TableHead head, boolean first, float left) {
    float most = around.highest() - (head == null ? 0 : head.height());
    TableRow rest = row;
    boolean begins = first;
    while (rest.height() > most && most > 0) {
      around.flow().add(rest.takeOff(most), left, head, begins);
      begins = false;
      if (rest.isEmpty()) {
        return;
      }
      TableRow last = rest.takeOff(Float.MAX_VALUE);
      rest = last;
    }
    around.flow().add(rest, left, head, begins);
  }

  /** The end of the rows from one on that cells over several rows hold together. */
  private static int groupEnd(List<TableGrid.Row> rows, int from) {
    int end = from + 1;
    for (int i = from; i < end && i < rows.size(); i++) {
      for (TableGrid.Cell cell : rows.get(i).cells()) {
        end = Math.max(end, Math.min(rows.size(), i + cell.rows()));
      }
    }
    return end;
  }

  private float[] edges(float[] widths) {
    float[] edges = new float[widths.length + 1];
    for (int i = 0; i < widths.length; i++) {
      edges[i + 1] = edges[i] + widths[i];
    }
    return edges;
  }

  private float[] widths(float table) throws StyleProblem {
    int count = grid.width();
    Length[] given = new Length[count];
    for (int i = 0; i < count; i++) {
      given[i] = grid.givenWidth(i);
    }
    if (branch.style().box().fixedLayout()) {
      return ColumnWidths.fixed(given, table);
    }
    float[] least = new float[count];
    float[] most = new float[count];
    Intrinsic intrinsic = new Intrinsic(around.shop());
    for (boolean single : new boolean[] {true, false}) {
      measure(grid.head(), intrinsic, least, most, single);
      measure(grid.body(), intrinsic, least, most, single);
    }
    return ColumnWidths.auto(least, most, given, table);
  }

  private void measure(
      List<TableGrid.Row> rows, Intrinsic intrinsic, float[] least, float[] most, boolean single)
      throws StyleProblem {
    for (TableGrid.Row row : rows) {
      for (TableGrid.Cell cell : row.cells()) {
        if (single == (cell.columns() == 1)) {
          Intrinsic.Range range = intrinsic.content(cell.branch());
          float insets = insets(cell);
          widen(least, cell, range.least() + insets);
          widen(most, cell, range.most() + insets);
        }
      }
    }
  }

  private float insets(TableGrid.Cell cell) {
    BoxStyle box = cell.box();
    float shared = collapses ? 0.5f : 1;
    return box.padding().get(BoxStyle.LEFT).of(0)
        + box.padding().get(BoxStyle.RIGHT).of(0)
        + shared
            * (box.border().get(BoxStyle.LEFT).width() + box.border().get(BoxStyle.RIGHT).width());
  }

  /** Gives the columns of a cell at least a width, each the same part of what is missing. */
  private static void widen(float[] widths, TableGrid.Cell cell, float wanted) {
    float now = 0;
    for (int i = cell.column(); i < cell.column() + cell.columns(); i++) {
      now += widths[i];
    }
    for (int i = cell.column(); wanted > now && i < cell.column() + cell.columns(); i++) {
      widths[i] += (wanted - now) / cell.columns();
    }
  }

  /** Lays out some rows that belong together, between the one before and the one after. */
  private List<TableRow> rows(
      List<TableGrid.Row> all, int from, int to, TableGrid.Row before, TableGrid.Row after)
      throws StyleProblem {
    List<List<CellLayout>> cells = new ArrayList<>(to - from);
    float[] heights = new float[to - from];
    for (int r = from; r < to; r++) {
      TableGrid.Row above = r == from ? before : all.get(r - 1);
      TableGrid.Row below = r == to - 1 ? after : all.get(r + 1);
      TableGrid.Row row = all.get(r);
      Tag rowTag = new Tag(section(row.section()), "TR");
      List<CellLayout> laid = new ArrayList<>(row.cells().size());
      float rowHeight = row.branch().style().box().height().points();
      heights[r - from] = Math.max(heights[r - from], rowHeight);
      for (TableGrid.Cell cell : row.cells()) {
        CellLayout layout =
            new CellLayout(
                around,
                cell,
                around
                    .shop()
                    .tagger()
                    .cell(cell.branch().element(), rowTag, cell.columns(), cell.rows()),
                edges[cell.column()],
                edges[Math.min(edges.length - 1, cell.column() + cell.columns())],
                borders(row, cell, above, below));
        laid.add(layout);
        if (cell.rows() == 1) {
          heights[r - from] = Math.max(heights[r - from], layout.height());
        }
      }
      cells.add(laid);
    }
    stretch(cells, heights);
    List<TableRow> rows = new ArrayList<>(to - from);
    for (int r = 0; r < heights.length; r++) {
      List<TableRow.Box> boxes = new ArrayList<>(cells.get(r).size());
      for (CellLayout cell : cells.get(r)) {
        boxes.add(cell.box(over(heights, r, cell.rows()), collapses));
      }
      Tag rowTag = cells.get(r).isEmpty() ? tag : cells.get(r).get(0).tag().parent();
      rows.add(new TableRow(rowTag, boxes, heights[r]));
    }
    return rows;
  }

  /** Makes the last row of a cell over several rows high enough for it. */
  private static void stretch(List<List<CellLayout>> cells, float[] heights) {
    for (int r = 0; r < heights.length; r++) {
      for (CellLayout cell : cells.get(r)) {
        float missing = cell.height() - over(heights, r, cell.rows());
        if (missing > 0) {
          heights[Math.min(heights.length, r + cell.rows()) - 1] += missing;
        }
      }
    }
  }

  private static float over(float[] heights, int from, int rows) {
    float sum = 0;
    for (int i = from; i < Math.min(heights.length, from + rows); i++) {
      sum += heights[i];
    }
    return sum;
  }

  private Tag section(Branch section) {
    return section == branch
        ? tag
        : sections.computeIfAbsent(section, s -> around.shop().tagger().block(s.element(), tag));
  }

  private List<Border> borders(
      TableGrid.Row row, TableGrid.Cell cell, TableGrid.Row above, TableGrid.Row below) {
    List<Border> own = cell.box().border();
    if (!collapses) {
      return own;
    }
    Border top = own.get(BoxStyle.TOP).stronger(facing(above, cell, BoxStyle.BOTTOM));
    Border bottom = own.get(BoxStyle.BOTTOM).stronger(facing(below, cell, BoxStyle.TOP));
    Border left = own.get(BoxStyle.LEFT);
    Border right = own.get(BoxStyle.RIGHT);
    for (TableGrid.Cell other : row.cells()) {
      if (other.column() + other.columns() == cell.column()) {
        left = left.stronger(other.box().border().get(BoxStyle.RIGHT));
      } else if (other.column() == cell.column() + cell.columns()) {
        right = right.stronger(other.box().border().get(BoxStyle.LEFT));
      }
    }
    return List.of(top, right, bottom, left);
  }

  /** The border that a row turns to a cell. */
  private static Border facing(TableGrid.Row row, TableGrid.Cell cell, int side) {
    if (row != null) {
      for (TableGrid.Cell other : row.cells()) {
        if (other.column() <= cell.column() && cell.column() < other.column() + other.columns()) {
          return other.box().border().get(side);
        }
      }
    }
    return Border.NONE;
  }
}
