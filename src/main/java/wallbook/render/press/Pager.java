package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Fills pages with slices: as many as fit, then back to the last place where a page may end at the
 * least cost. Holds no more than about two pages of slices. Lengths are in points.
 */
final class Pager implements Consumer<Slice> {
  /** What rounding may add to a page. */
  private static final float SLACK = 0.05f;

  private static final float PAGES_HELD = 2.5f;

  private final Sheets sheets;
  private final Consumer<List<Slice>> printer;
  private final List<Slice> waiting = new ArrayList<>();
  private float height;

  /**
   * @param printer takes the slices of each page
   */
  Pager(Sheets sheets, Consumer<List<Slice>> printer) {
    this.sheets = sheets;
    this.printer = printer;
  }

  @Override
  public void accept(Slice slice) {
    waiting.add(slice);
    height += slice.gap() + slice.height();
    if (height > PAGES_HELD * sheets.named(slice.page()).content().height()) {
      print();
    }
  }

  /** Prints all that is left. */
  void finish() {
    while (!waiting.isEmpty()) {
      print();
    }
  }

  private void print() {
    int end = end();
    List<Slice> page = new ArrayList<>(waiting.subList(0, end));
    waiting.subList(0, end).clear();
    height = 0;
    for (Slice slice : waiting) {
      height += slice.gap() + slice.height();
    }
    printer.accept(page);
  }

  /** How many of the slices stand on the page. */
  private int end() {
    Slice first = waiting.get(0);
    float most = sheets.named(first.page()).content().height() + SLACK;
    float used = 0;
    for (int i = 0; i < waiting.size(); i++) {
      Slice slice = waiting.get(i);
      if (i > 0 && slice.forced()) {
        return i;
      }
      used += gap(slice, i == 0) + head(slice, i == 0) + slice.height();
      if (used > most && i > 0) {
        return best(i);
      }
    }
    return waiting.size();
  }

  /** The room above a slice; none where a page begins, unless it was to begin there. */
  static float gap(Slice slice, boolean begins) {
    return begins && !slice.forced() ? 0 : slice.gap();
  }

  /** The height of the head of its table, where it is drawn above a slice. */
  static float head(Slice slice, boolean begins) {
    return slice.head() != null && (begins || slice.firstOfTable()) ? slice.head().height() : 0;
  }

  private int best(int limit) {
    int best = limit;
    for (int i = limit; i > 0; i--) {
      if (waiting.get(i).bond() < waiting.get(best).bond()) {
        best = i;
      }
    }
    return best;
  }
}
