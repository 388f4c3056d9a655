package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Turns boxes that open and close into slices, one below the other: margins meet and collapse (CSS
 * 2.1, 8.3.1), paddings and borders go to the slice that follows or the one before, and each slice
 * knows whether a page may end before it. Lengths are in points.
 */
final class Flow {
  private final Consumer<Slice> next;
  private String page = "";
  private Slice last;
  private float positive;
  private float negative;
  private float gap;
  private float above;
  private boolean opened;
  private boolean forced;
  private int bond;
  private int kept;
  private int heldBy;
  private float height;
  private List<Slice.Opening> openings = new ArrayList<>(1);
  private List<String> anchors = new ArrayList<>(1);
  private List<Mark> marks = new ArrayList<>(1);

  /**
   * @param next takes each slice as it is made; the last one may still get room below
   */
  Flow(Consumer<Slice> next) {
    this.next = next;
  }

  /** Name of the pages that what follows stands on. */
  String page() {
    return page;
  }

  void page(String name) {
    this.page = name;
  }

  /** Whether nothing has come yet. */
  boolean isEmpty() {
    return last == null;
  }

  /** Height of all slices so far with their gaps. */
  float height() {
    return height;
  }

  /** Adds a margin, which collapses with those next to it. */
  void margin(float points) {
    positive = Math.max(positive, points);
    negative = Math.min(negative, points);
  }

  /** A page begins with what follows. */
  void force() {
    forced = true;
  }

  /** What follows stays with what was before. */
  void bind(int least) {
    bond = Math.max(bond, least);
  }

  /** What follows, up to the matching {@link #release}, is kept in one piece. */
  void keep() {
    kept++;
    heldBy = kept == 1 ? 0 : heldBy;
  }

  void release() {
    kept--;
  }

  void anchor(String name) {
    anchors.add(name);
  }

  /** The mark of a list beside a slice. */
  record Mark(Body body, float left) {}

  /** Puts the mark of a list beside what follows. */
  void mark(Body body, float left) {
    marks.add(new Mark(body, left));
  }

  /** Opens a box: its decoration, if it has any, and the room inside its upper edge. */
  void open(Decor decor, float inset) {
    flush();
    opened = true;
    if (decor != null) {
      openings.add(new Slice.Opening(decor, above));
    }
    above += inset;
  }

  /** Closes the box that was opened last. */
  void close(Decor decor, float inset) {
    if (last == null || opened) {
      add(new Body.Blank(0), 0);
    }
    float margin = positive + negative;
    positive = 0;
    negative = 0;
    pad(margin + inset);
    if (decor != null) {
      last.close(decor);
    }
  }

  /** Adds room at the end of the last slice. */
  void pad(float points) {
    last.pad(points);
    height += points;
  }

  void add(Body body, float left) {
    add(body, left, null, false);
  }

  /** Adds a row. */
  void add(Body body, float left, TableHead head, boolean firstOfTable) {
    flush();
    forced |= last == null || !last.page().equals(page);
    if (kept > 0 && heldBy > 0) {
      bind(Slice.INSIDE);
    }
    heldBy++;
    last = new Slice(this, body, left, head, firstOfTable);
    height += gap + last.height();
    gap = 0;
    above = 0;
    opened = false;
    forced = false;
    bond = Slice.FREE;
    next.accept(last);
  }

  private void flush() {
    float margin = positive + negative;
    positive = 0;
    negative = 0;
    if (opened) {
      above += margin;
    } else {
      gap += margin;
    }
  }

  float gap() {
    return gap;
  }

  float above() {
    return above;
  }

  boolean forced() {
    return forced;
  }

  int bond() {
    return bond;
  }

  List<Slice.Opening> takeOpenings() {
    List<Slice.Opening> taken = openings;
    openings = new ArrayList<>(1);
    return taken;
  }

  List<Mark> takeMarks() {
    List<Mark> taken = marks;
    marks = new ArrayList<>(1);
    return taken;
  }

  List<String> takeAnchors() {
    List<String> taken = anchors;
    anchors = new ArrayList<>(1);
    return taken;
  }
}
