package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;

/** Slices one below the other that no page comes between, as in a cell. */
final class Stack implements Body {
  private final List<Slice> slices = new ArrayList<>(2);

  /** A flow whose slices come into the stack. */
  Flow flow() {
    return new Flow(slices::add);
  }

  @Override
  public float height() {
    float height = 0;
    for (Slice slice : slices) {
      height += slice.gap() + headOf(slice) + slice.height();
    }
    return height;
  }

  private static float headOf(Slice slice) {
    return slice.firstOfTable() ? slice.head().height() : 0;
  }

  /** The height of its first slice. */
  float first() {
    return slices.isEmpty()
        ? 0
        : slices.get(0).gap() + headOf(slices.get(0)) + slices.get(0).height();
  }

  /** Takes off the slices at the top that fit a height, at least one. */
  Stack takeOff(float most) {
    Stack taken = new Stack();
    float used = 0;
    while (!slices.isEmpty()) {
      Slice slice = slices.get(0);
      used += slice.gap() + headOf(slice) + slice.height();
      if (used > most && !taken.slices.isEmpty()) {
        break;
      }
      taken.slices.add(slices.remove(0));
    }
    return taken;
  }

  /** Whether all slices fit into some columns of a height. */
  boolean fits(float height, int columns) {
    int begun = 1;
    float used = 0;
    for (Slice slice : slices) {
      float own = slice.gap() + headOf(slice) + slice.height();
      if (used > 0 && used + own > height) {
        begun++;
        used = 0;
      }
      used += own;
    }
    return begun <= columns;
  }

  boolean isEmpty() {
    return slices.isEmpty();
  }

  @Override
  public void ground(Sheet sheet, float x, float y) {
    float at = y;
    for (Slice slice : slices) {
      at += slice.gap();
      if (slice.firstOfTable()) {
        slice.head().ground(sheet, x + slice.left(), at);
        at += slice.head().height();
      }
      for (Slice.Opening opening : slice.openings()) {
        float end = end(slice, opening.decor(), at);
        opening.decor().paint(sheet, x, at + opening.down(), end, true, true);
      }
      slice.body().ground(sheet, x + slice.left(), at + slice.above());
      at += slice.height();
    }
  }

  /** Where a box that opens in a slice ends. */
  private float end(Slice from, Decor decor, float top) {
    float at = top;
    for (int i = slices.indexOf(from); i < slices.size(); i++) {
      Slice slice = slices.get(i);
      at += slice == from ? 0 : slice.gap();
      for (Slice.Closing closing : slice.closings()) {
        if (closing.decor() == decor) {
          return at + closing.down();
        }
      }
      at += slice.height();
    }
    return at;
  }

  @Override
  public void ink(Sheet sheet, float x, float y) {
    float at = y;
    for (Slice slice : slices) {
      at += slice.gap();
      if (slice.firstOfTable()) {
        slice.head().ink(sheet, x + slice.left(), at);
        at += slice.head().height();
      }
      sheet.anchors(slice.anchors(), at);
      slice.marks(sheet, x, at + slice.above());
      slice.body().ink(sheet, x + slice.left(), at + slice.above());
      at += slice.height();
    }
  }
}
