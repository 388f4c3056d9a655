package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Element;
import wallbook.render.Tag;

/** Lays blocks out one below the other. Lengths are in points. */
final class BlockLayout {
  private final Workshop shop;
  private final Sheets sheets;
  private final Flow flow;
  private String page = "";

  /**
   * @param sheets what pages there are
   * @param flow where the slices go
   */
  BlockLayout(Workshop shop, Sheets sheets, Flow flow) {
    this.shop = shop;
    this.sheets = sheets;
    this.flow = flow;
  }

  /** A layout of the same document whose slices go elsewhere. */
  BlockLayout into(Flow other) {
    BlockLayout layout = new BlockLayout(shop, sheets, other);
    layout.page = page;
    other.page(page);
    return layout;
  }

  Workshop shop() {
    return shop;
  }

  Flow flow() {
    return flow;
  }

  /** The greatest height that a slice can have here. */
  float highest() {
    return sheets.named(page).content().height();
  }

  /**
   * Lays a block out.
   *
   * @param left edge of what lies around
   * @param width of what lies around
   */
  void block(Branch branch, Tag parent, float left, float width) throws StyleProblem {
    Style style = branch.style();
    BoxStyle box = style.box();
    if (style.display() == Keywords.Display.NONE) {
      return;
    }
    String pageBefore = page;
    float available = width;
    if (!box.page().isEmpty() && !box.page().equals(page)) {
      available +=
          sheets.named(box.page()).content().width() - sheets.named(page).content().width();
      page = box.page();
      flow.page(page);
    }
    if (box.breakBefore() == Keywords.Break.ALWAYS) {
      flow.force();
    } else if (box.breakBefore() == Keywords.Break.AVOID) {
      flow.bind(Slice.LED);
    }
    boolean keeps = box.breakInside() == Keywords.Break.AVOID;
    flow.margin(box.margin().get(BoxStyle.TOP).of(width));
    if (keeps) {
      flow.keep();
    }
    if (branch.element().hasAttr("id")) {
      flow.anchor(branch.element().id());
    }
    placed(branch, parent, left, available);
    if (keeps) {
      flow.release();
    }
    flow.margin(box.margin().get(BoxStyle.BOTTOM).of(width));
    if (box.breakAfter() == Keywords.Break.AVOID) {
      flow.bind(Slice.LED);
    } else if (box.breakAfter() == Keywords.Break.ALWAYS) {
      flow.force();
    }
    page = pageBefore;
    flow.page(page);
  }

  private void placed(Branch branch, Tag parent, float left, float width) throws StyleProblem {
    BoxStyle box = branch.style().box();
    float before = box.margin().get(BoxStyle.LEFT).of(width);
    float after = box.margin().get(BoxStyle.RIGHT).of(width);
    float insets = box.inset(BoxStyle.LEFT, width) + box.inset(BoxStyle.RIGHT, width);
    Optional<Image> image = shop.image(branch.element());
    if (image.isPresent()) {
      picture(branch, image.get(), parent, left + before, width - before - after);
      return;
    }
    boolean isTable = branch.style().display() == Keywords.Display.TABLE;
    float outer = width - before - after;
    if (!box.width().auto()) {
      outer = box.width().of(width) + (isTable ? 0 : insets);
    }
    if (!box.maxWidth().auto()) {
      outer = Math.min(outer, box.maxWidth().of(width) + insets);
    }
    float spare = width - outer - before - after;
    if (box.margin().get(BoxStyle.LEFT).auto() && spare > 0) {
      before = box.margin().get(BoxStyle.RIGHT).auto() ? spare / 2 : spare;
    }
    if (isTable) {
      new TableLayout(this, branch, parent).lay(left + before, outer);
      return;
    }
    container(branch, parent, left + before, outer, width);
  }

  private void container(Branch branch, Tag parent, float left, float outer, float around)
      throws StyleProblem {
    BoxStyle box = branch.style().box();
    Tag tag = shop.tagger().block(branch.element(), parent);
    Tag inner = tag;
    float begin = left + box.inset(BoxStyle.LEFT, around);
    if (branch.style().display() == Keywords.Display.LIST_ITEM && tag != parent) {
      inner = listItem(branch, tag, begin);
    }
    Decor decor = box.isSeen() ? new Decor(box, left, outer) : null;
    float above = box.inset(BoxStyle.TOP, around);
    float below = box.inset(BoxStyle.BOTTOM, around);
    float height = box.height().auto() ? 0 : box.height().points();
    boolean opens = decor != null || above > 0 || below > 0 || height > 0;
    if (opens) {
      flow.open(decor, above);
    }
    float from = flow.height();
    float room = outer - box.inset(BoxStyle.LEFT, around) - box.inset(BoxStyle.RIGHT, around);
    if (box.columns() > 1) {
      new ColumnLayout(this, branch, inner).lay(begin, room);
    } else {
      children(branch, inner, begin, room);
    }
    if (opens) {
      if (height > 0) {
        fill(height - (flow.height() - from));
      }
      flow.close(decor, below);
    }
  }

  private void fill(float missing) {
    if (missing > 0) {
      flow.add(new Body.Blank(missing), 0);
    }
  }

  /** Lays the children of a block out; those that stand in lines become paragraphs. */
  void children(Branch branch, Tag tag, float left, float width) throws StyleProblem {
    List<Object> inline = new ArrayList<>();
    boolean begins = true;
    for (Object node : shop.nodes(branch)) {
      if (isInline(node)) {
        inline.add(node);
      } else {
        paragraph(branch, inline, tag, new Column(left, width), begins, false);
        begins = false;
        inline.clear();
        block((Branch) node, tag, left, width);
      }
    }
    paragraph(branch, inline, tag, new Column(left, width), begins, true);
  }

  /** Where lines are set. */
  private record Column(float left, float width) {}

  private static boolean isInline(Object node) {
    if (node instanceof Branch branch) {
      Keywords.Display display = branch.style().display();
      return display == Keywords.Display.INLINE || display == Keywords.Display.INLINE_BLOCK;
    }
    return true;
  }

  private void paragraph(
      Branch branch, List<Object> nodes, Tag tag, Column column, boolean begins, boolean ends)
      throws StyleProblem {
    boolean written = shop.writes(branch, begins, ends);
    if (!written && InlineReader.isBlank(nodes)) {
      return;
    }
    Tag holder = tag.holdsText() ? tag : new Tag(tag, "P");
    Passage text = InlineReader.read(shop, branch, nodes, holder, begins, ends);
    if (!text.isEmpty()) {
      BlockStyle block = branch.style().block();
      lines(LineBreaker.lines(text, block, column.width()), block, column.left());
    }
  }

  private void lines(List<Line> lines, BlockStyle block, float left) {
    int count = lines.size();
    for (int i = 0; i < count; i++) {
      if (i > 0 && (i < block.orphans() || count - i < block.widows())) {
        flow.bind(Slice.FEW_LINES);
      }
      flow.add(lines.get(i), left);
    }
  }

  private Tag listItem(Branch branch, Tag tag, float left) {
    if (tag.type().equals("LI")) {
      ListMarks.text(branch)
          .ifPresent(
              words -> {
                Tag label = new Tag(tag, "Lbl");
                TypeStyle type = branch.style().type();
                Passage text = InlineReader.read(shop, words, type, label);
                Line mark =
                    LineBreaker.lines(text, branch.style().block(), Float.MAX_VALUE / 4).get(0);
                flow.mark(mark, left - mark.width() - ListMarks.GAP * type.size());
              });
      return new Tag(tag, "LBody");
    }
    return tag;
  }

  private void picture(Branch branch, Image image, Tag parent, float left, float width) {
    Element element = branch.element();
    PictureSize size = PictureSize.of(image, branch.style().box(), width, highest());
    Tag figure = new Tag(parent, "Figure", element.attr("alt"));
    flow.add(new Picture(image, figure, size.width(), size.height()), left);
  }
}
