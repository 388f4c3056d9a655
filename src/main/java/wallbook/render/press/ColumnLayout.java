package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;

/** Lays the children of a block out in columns of about one height. */
final class ColumnLayout {
  private final BlockLayout around;
  private final Branch branch;
  private final Tag tag;

  ColumnLayout(BlockLayout around, Branch branch, Tag tag) {
    this.around = around;
    this.branch = branch;
    this.tag = tag;
  }

  /** Columns side by side. */
  private record Columns(List<Stack> stacks, float step) implements Body {
    @Override
    public float height() {
      float height = 0;
      for (Stack stack : stacks) {
        height = Math.max(height, stack.height());
      }
      return height;
    }

    @Override
    public void ground(Sheet sheet, float x, float y) {
      for (int i = 0; i < stacks.size(); i++) {
        stacks.get(i).ground(sheet, x + i * step, y);
      }
    }

    @Override
    public void ink(Sheet sheet, float x, float y) {
      for (int i = 0; i < stacks.size(); i++) {
        stacks.get(i).ink(sheet, x + i * step, y);
      }
    }
  }

  void lay(float left, float width) throws StyleProblem {
    BoxStyle box = branch.style().box();
    int count = box.columns();
    float column = (width - (count - 1) * box.columnGap()) / count;
    Stack all = new Stack();
    BlockLayout inside = around.into(all.flow());
    inside.children(branch, tag, 0, column);
    while (!all.isEmpty()) {
      float wanted = Math.min(all.height() / count, around.highest());
      Stack part = all.height() > count * around.highest() ? all.takeOff(count * wanted) : all;
      around.flow().add(new Columns(split(part, count), column + box.columnGap()), left);
      if (part == all || part.isEmpty() && all.isEmpty()) {
        return;
      }
    }
  }

  /** The least height at which all fits into the columns, found by growing it slice by slice. */
  private static List<Stack> split(Stack all, int count) {
    float height = all.height() / count;
    while (!all.fits(height, count)) {
      height += 1;
    }
    List<Stack> columns = new ArrayList<>();
    while (!all.isEmpty()) {
      columns.add(all.takeOff(height));
    }
    return columns;
  }
}
