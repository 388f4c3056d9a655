package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Draws the slices of each page, and the boxes around them as far as they are on it. */
final class PagePrinter implements Consumer<List<Slice>> {
  private final Book book;
  private final Sheets sheets;
  private final List<Sheet> printed = new ArrayList<>();
  private final List<Decor> open = new ArrayList<>();

  PagePrinter(Book book, Sheets sheets) {
    this.book = book;
    this.sheets = sheets;
  }

  /** A box, as far as it is on the page. */
  private static final class Part {
    private final Decor decor;
    private final float top;
    private final boolean begins;
    private float bottom = Float.NaN;

    private Part(Decor decor, float top, boolean begins) {
      this.decor = decor;
      this.top = top;
      this.begins = begins;
    }
  }

  @Override
  public void accept(List<Slice> slices) {
    Slice first = slices.get(0);
    Geometry geometry = sheets.named(first.page());
    Sheet sheet = new Sheet(book, geometry, first.page());
    printed.add(sheet);
    float[] tops = tops(slices, geometry.content().top());
    ground(sheet, slices, tops);
    ink(sheet, slices, tops);
    sheet.close();
  }

  /** The upper edge of each slice, below the head that may be repeated above it. */
  private static float[] tops(List<Slice> slices, float from) {
    float[] tops = new float[slices.size()];
    float at = from;
    for (int i = 0; i < tops.length; i++) {
      Slice slice = slices.get(i);
      at += Pager.gap(slice, i == 0) + Pager.head(slice, i == 0);
      tops[i] = at;
      at += slice.height();
    }
    return tops;
  }

  private void ground(Sheet sheet, List<Slice> slices, float[] tops) {
    float x = sheet.geometry().content().left();
    List<Part> parts = new ArrayList<>();
    float pageTop = tops[0] - Pager.head(slices.get(0), true);
    for (Decor decor : open) {
      parts.add(new Part(decor, pageTop, false));
    }
    for (int i = 0; i < tops.length; i++) {
      Slice slice = slices.get(i);
      float top = tops[i];
      for (Slice.Opening opening : slice.openings()) {
        open.add(opening.decor());
        parts.add(new Part(opening.decor(), top + opening.down(), true));
      }
      for (Slice.Closing closing : slice.closings()) {
        open.remove(closing.decor());
        parts.stream()
            .filter(part -> part.decor == closing.decor())
            .forEach(part -> part.bottom = top + closing.down());
      }
    }
    int last = tops.length - 1;
    float pageBottom = tops[last] + slices.get(last).height();
    for (Part part : parts) {
      boolean ends = !Float.isNaN(part.bottom);
      part.decor.paint(sheet, x, part.top, ends ? part.bottom : pageBottom, part.begins, ends);
    }
    for (int i = 0; i < tops.length; i++) {
      Slice slice = slices.get(i);
      float head = Pager.head(slice, i == 0);
      if (head > 0) {
        slice.head().ground(sheet, x + slice.left(), tops[i] - head);
      }
      slice.body().ground(sheet, x + slice.left(), tops[i] + slice.above());
    }
  }

  private static void ink(Sheet sheet, List<Slice> slices, float[] tops) {
    float x = sheet.geometry().content().left();
    for (int i = 0; i < tops.length; i++) {
      Slice slice = slices.get(i);
      float head = Pager.head(slice, i == 0);
      sheet.anchors(slice.anchors(), tops[i] - head);
      if (head > 0) {
        slice.head().ink(sheet, x + slice.left(), tops[i] - head);
      }
      slice.marks(sheet, x, tops[i] + slice.above());
      slice.body().ink(sheet, x + slice.left(), tops[i] + slice.above());
    }
  }

  /** Adds to all pages what only the end of the document tells. */
  void finish(MarginPrinter margins) {
    for (Sheet sheet : printed) {
      sheet.finish(margins);
    }
  }
}
