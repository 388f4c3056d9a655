package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import wallbook.render.Tag;

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
    float most = count * around.highest();
    while (all.height() > most) {
      add(all.takeOff(most), left, column + box.columnGap());
    }
    if (!all.isEmpty()) {
      add(all, left, column + box.columnGap());
    }
  }

  private void add(Stack part, float left, float step) {
    List<Stack> columns = split(part, branch.style().box().columns());
    around.flow().add(new Columns(columns, step), left);
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
