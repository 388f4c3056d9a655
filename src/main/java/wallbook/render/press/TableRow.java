package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import wallbook.render.Tag;

/**
 * A row of a table, laid out. Lengths are in points.
 *
 * @param tag of the row
 * @param height of the row
 */
record TableRow(Tag tag, List<Box> boxes, float height) implements Body {
  TableRow {
    boxes = List.copyOf(boxes);
  }

  /**
   * A cell, laid out.
   *
   * @param left edge from the table's
   * @param insetLeft from its edge to its text
   * @param down from the row's upper edge to its text
   * @param height of the cell, over all its rows
   * @param borders from the top clockwise, as they are drawn; shared ones lie on the edges
   */
  record Box(
      Tag tag,
      Stack stack,
      float left,
      float width,
      float insetLeft,
      float down,
      float height,
      int background,
      List<Border> borders,
      boolean shared) {
    Box {
      borders = List.copyOf(borders);
    }

    /** A part of the cell. */
    Box with(Stack part, float high) {
      return new Box(tag, part, left, width, insetLeft, down, high, background, borders, shared);
    }

    void ground(Sheet sheet, float x, float y) {
      if (background != Values.TRANSPARENT) {
        sheet.rectangle(x + left, y, width, height, background);
      }
    }

    void upright(Sheet sheet, float x, float y) {
      rule(sheet, x + left, y, false, borders.get(BoxStyle.LEFT), 0);
      rule(sheet, x + left + width, y, false, borders.get(BoxStyle.RIGHT), 1);
    }

    void above(Sheet sheet, float x, float y) {
      rule(sheet, x + left, y, true, borders.get(BoxStyle.TOP), 0);
    }

    void below(Sheet sheet, float x, float y) {
      rule(sheet, x + left, y + height, true, borders.get(BoxStyle.BOTTOM), 1);
    }

    /** A rule along an edge: on it if shared, else inside. */
    private void rule(Sheet sheet, float x, float y, boolean across, Border border, float back) {
      if (border.width() == 0) {
        return;
      }
      float shift = border.width() * (shared ? 0.5f : back);
      if (across) {
        sheet.rectangle(x, y - shift, width, border.width(), border.colour());
      } else {
        sheet.rectangle(x - shift, y, border.width(), height, border.colour());
      }
    }
  }

  @Override
  public void ground(Sheet sheet, float x, float y) {
    for (Box box : boxes) {
      box.ground(sheet, x, y);
    }
    // Those on one line after each other, so that the pen can draw them in one.
    for (Box box : boxes) {
      box.upright(sheet, x, y);
    }
    for (Box box : boxes) {
      box.above(sheet, x, y);
    }
    for (Box box : boxes) {
      box.below(sheet, x, y);
    }
    for (Box box : boxes) {
      box.stack().ground(sheet, x + box.left() + box.insetLeft(), y + box.down());
    }
  }

  @Override
  public void ink(Sheet sheet, float x, float y) {
    sheet.tag(tag);
    for (Box box : boxes) {
      sheet.tag(box.tag());
      box.stack().ink(sheet, x + box.left() + box.insetLeft(), y + box.down());
    }
  }

  /** The part of a row that is higher than a page: what fits a height, taken off the cells. */
  TableRow takeOff(float most) {
    List<Box> parts = new ArrayList<>(boxes.size());
    float highest = 0;
    for (Box box : boxes) {
      Stack part = box.stack().takeOff(most - box.down());
      highest = Math.max(highest, box.down() + part.height());
      parts.add(box.with(part, 0));
    }
    float height = highest;
    return new TableRow(
        tag, parts.stream().map(box -> box.with(box.stack(), height)).toList(), height);
  }

  /** Whether all its cells are empty. */
  boolean isEmpty() {
    return boxes.stream().allMatch(box -> box.stack().isEmpty());
  }
}
