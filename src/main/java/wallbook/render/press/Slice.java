package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a page's height that is not split: a line, a row, a picture, with what opens above and
 * closes below it. Lengths are in points.
 */
final class Slice {
  /** How unwelcome it is that a page ends before a slice; a page ends where it is least so. */
  static final int FREE = 0;

  /** The last row of a table would stand alone. */
  static final int LAST_ROW = 1;

  /** Too few lines of a paragraph would stand alone. */
  static final int FEW_LINES = 2;

  /** Something would be split that should be kept in one piece. */
  static final int INSIDE = 3;

  /** Something would be parted from what it leads to. */
  static final int LED = 4;

  private final Body body;
  private final float left;
  private final String page;
  private final List<Opening> openings;
  private final List<Closing> closings = new ArrayList<>(1);
  private final List<String> anchors;
  private final TableHead head;
  private final boolean firstOfTable;
  private final List<Flow.Mark> marks;
  private final float gap;
  private final boolean forced;
  private final float above;
  private float below;
  private int bond;

  /** A box that begins this far below the top of the slice. */
  record Opening(Decor decor, float down) {}

  /** A box that ends this far below the top of the slice. */
  record Closing(Decor decor, float down) {}

  Slice(Flow flow, Body body, float left, TableHead head, boolean firstOfTable) {
    this.body = body;
    this.left = left;
    this.head = head;
    this.firstOfTable = firstOfTable;
    this.page = flow.page();
    this.openings = flow.takeOpenings();
    this.anchors = flow.takeAnchors();
    this.marks = flow.takeMarks();
    this.gap = flow.gap();
    this.above = flow.above();
    this.forced = flow.forced();
    this.bond = flow.bond();
  }

  Body body() {
    return body;
  }

  float left() {
    return left;
  }

  /** Name of the pages that it stands on. */
  String page() {
    return page;
  }

  List<Opening> openings() {
    return openings;
  }

  List<Closing> closings() {
    return closings;
  }

  /** Anchors that lead to its top. */
  List<String> anchors() {
    return anchors;
  }

  /** The head that is repeated above it where it begins a page; null if it is no row. */
  TableHead head() {
    return head;
  }

  /** Whether it is the row right below the head. */
  boolean firstOfTable() {
    return firstOfTable;
  }

  /** Draws the marks of lists at its side. */
  void marks(Sheet sheet, float x, float y) {
    for (Flow.Mark mark : marks) {
      mark.body().ink(sheet, x + mark.left(), y);
    }
  }

  /** Room above it, left out where it begins a page. */
  float gap() {
    return gap;
  }

  /** Whether a page begins with it in any case. */
  boolean forced() {
    return forced;
  }

  /** Room of its own above its body. */
  float above() {
    return above;
  }

  /** Its height without the gap. */
  float height() {
    return above + body.height() + below;
  }

  int bond() {
    return bond;
  }

  void bind(int least) {
    bond = Math.max(bond, least);
  }

  /** Adds room below the body. */
  void pad(float points) {
    below += points;
  }

  void close(Decor decor) {
    closings.add(new Closing(decor, height()));
  }
}
