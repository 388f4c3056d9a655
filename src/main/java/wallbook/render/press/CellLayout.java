package wallbook.render.press;

import java.util.List;
import wallbook.render.Tag;

/** A cell of a table on its way to its row. Lengths are in points. */
final class CellLayout {
  private final TableGrid.Cell cell;
  private final Tag tag;
  private final Stack stack = new Stack();
  private final float left;
  private final float width;
  private final List<Border> borders;
  private final float share;

  /**
   * @param left edge of its first column
   * @param right edge of its last
   * @param borders as they are drawn
   */
  CellLayout(
      BlockLayout around,
      TableGrid.Cell cell,
      Tag tag,
      float left,
      float right,
      List<Border> borders)
      throws StyleProblem {
    this.cell = cell;
    this.tag = tag;
    this.left = left;
    this.width = right - left;
    this.borders = borders;
    this.share = cell.branch().style().block().collapses() ? 0.5f : 1;
    float room = width - inset(BoxStyle.LEFT) - inset(BoxStyle.RIGHT);
    Flow flow = stack.flow();
    if (cell.branch().element().hasAttr("id")) {
      flow.anchor(cell.branch().element().id());
    }
    around.into(flow).children(cell.branch(), tag, 0, Math.max(0, room));
  }

  private float inset(int side) {
    return cell.box().padding().get(side).of(width) + share * borders.get(side).width();
  }

  Tag tag() {
    return tag;
  }

  int rows() {
    return cell.rows();
  }

  float height() {
    float content = stack.height() + inset(BoxStyle.TOP) + inset(BoxStyle.BOTTOM);
    Length given = cell.box().height();
    return Math.max(
        content, given.auto() ? 0 : given.points() + inset(BoxStyle.TOP) + inset(BoxStyle.BOTTOM));
  }

  /** The cell in a row, or rows, of some height. */
  TableRow.Box box(float height, boolean shared) {
    float spare = height - inset(BoxStyle.TOP) - inset(BoxStyle.BOTTOM) - stack.height();
    float down =
        switch (cell.box().verticalAlign()) {
          case MIDDLE -> spare / 2;
          case BOTTOM -> spare;
          default -> 0;
        };
    return new TableRow.Box(
        tag,
        stack,
        left,
        width,
        inset(BoxStyle.LEFT),
        inset(BoxStyle.TOP) + down,
        height,
        cell.box().background(),
        borders,
        shared);
  }
}
