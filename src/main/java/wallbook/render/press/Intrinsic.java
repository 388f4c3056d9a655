package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.render.Tag;

/** Finds how narrow and how wide a block would be by its text alone. Lengths are in points. */
final class Intrinsic {
  private static final Tag NOBODY = new Tag(null, "P");

  private final Workshop shop;

  Intrinsic(Workshop shop) {
    this.shop = shop;
  }

  /**
   * @param least width of the widest word
   * @param most width of the longest line that nothing breaks
   */
  record Range(float least, float most) {
    Range with(Range other) {
      return new Range(Math.max(least, other.least), Math.max(most, other.most));
    }

    Range plus(float points) {
      return new Range(least + points, most + points);
    }
  }

  /** The range of what a block holds, its own paddings left out. */
  Range content(Branch branch) throws StyleProblem {
    Range range = new Range(0, 0);
    List<Object> inline = new ArrayList<>();
    for (Object node : shop.nodes(branch)) {
      if (node instanceof Branch child && isBlock(child)) {
        range = range.with(text(branch, inline)).with(block(child));
        inline.clear();
      } else {
        inline.add(node);
      }
    }
    return range.with(text(branch, inline));
  }

  private static boolean isBlock(Branch branch) {
    Keywords.Display display = branch.style().display();
    return display != Keywords.Display.INLINE && display != Keywords.Display.INLINE_BLOCK;
  }

  private Range text(Branch branch, List<Object> nodes) throws StyleProblem {
    if (InlineReader.isBlank(nodes)) {
      return new Range(0, 0);
    }
    Passage text = InlineReader.read(shop, branch, nodes, NOBODY, true, true);
    return new Range(text.narrowest(), text.widest());
  }

  private Range block(Branch child) throws StyleProblem {
    BoxStyle box = child.style().box();
    if (child.style().display() == Keywords.Display.NONE) {
      return new Range(0, 0);
    }
    float insets = box.inset(BoxStyle.LEFT, 0) + box.inset(BoxStyle.RIGHT, 0);
    float margins = box.margin().get(BoxStyle.LEFT).of(0) + box.margin().get(BoxStyle.RIGHT).of(0);
    Optional<Image> image = shop.image(child.element());
    if (image.isPresent()) {
      float width = PictureSize.of(image.get(), box, Float.MAX_VALUE, Float.MAX_VALUE).width();
      return new Range(box.width().share() > 0 ? 0 : width, width).plus(insets + margins);
    }
    if (!box.width().auto() && box.width().share() == 0) {
      return new Range(box.width().points(), box.width().points()).plus(insets + margins);
    }
    return child.style().display() == Keywords.Display.TABLE
        ? table(child).plus(insets + margins)
        : content(child).plus(insets + margins);
  }

  private Range table(Branch table) throws StyleProblem {
    TableGrid grid = TableGrid.of(shop, table);
    float[] least = new float[grid.width()];
    float[] most = new float[grid.width()];
    for (List<TableGrid.Row> rows : List.of(grid.head(), grid.body())) {
      for (TableGrid.Row row : rows) {
        for (TableGrid.Cell cell : row.cells()) {
          BoxStyle box = cell.box();
          float insets = box.inset(BoxStyle.LEFT, 0) + box.inset(BoxStyle.RIGHT, 0);
          Range range = content(cell.branch()).plus(insets);
          least[cell.column()] = Math.max(least[cell.column()], range.least());
          most[cell.column()] = Math.max(most[cell.column()], range.most());
        }
      }
    }
    float narrow = 0;
    float wide = 0;
    for (int i = 0; i < least.length; i++) {
      narrow += least[i];
      wide += most[i];
    }
    return new Range(narrow, wide);
  }
}
