package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Text blocks of labels, and how they are painted once placed. */
final class Labels {
  /** Paper that a number fixed at the right of its symbol needs. */
  static final double TAG_MM = 5.5;

  private static final double WIDTH_MM = 34;

  private Labels() {}

  static List<TextBlock> texts(List<List<String>> labels) {
    return labels.stream()
        .map(label -> TextBlock.wrapped(label, Item.Type.LABEL, WIDTH_MM))
        .toList();
  }

  static List<TextBlock> numbers(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(n -> new TextBlock(List.of(String.valueOf(n)), Item.Type.LABEL_BOLD))
        .toList();
  }

  static List<LabelWish> wishes(List<Box> symbols, List<TextBlock> labels) {
    List<LabelWish> wishes = new ArrayList<>();
    for (int i = 0; i < symbols.size(); i++) {
      TextBlock label = labels.get(i);
      wishes.add(new LabelWish(symbols.get(i), label.widthMm(), label.heightMm()));
    }
    return wishes;
  }

  /** Labels right beside their symbols, for symbols that keep {@link #TAG_MM} free. */
  static List<PlacedLabel> tags(List<LabelWish> wishes) {
    return wishes.stream()
        .map(
            wish -> {
              double left = wish.symbol().right() + 0.3;
              double top = wish.symbol().centre().y() - wish.heightMm() / 2;
              Box box = new Box(left, top, left + wish.widthMm(), top + wish.heightMm());
              return new PlacedLabel(box, Optional.empty());
            })
        .toList();
  }

  /**
   * The text is set toward its symbol, on white paper so that light lines behind do not run through
   * it.
   */
  static void draw(Canvas canvas, TextBlock block, PlacedLabel place, Pt symbol) {
    Box box = place.box();
    canvas.box(new Ink(0, Ink.Tone.NONE, Ink.Tone.WHITE, Ink.Dash.SOLID), box);
    Item.Align align;
    if (symbol.x() <= box.left()) {
      align = Item.Align.LEFT;
    } else if (symbol.x() >= box.right()) {
      align = Item.Align.RIGHT;
    } else {
      align = Item.Align.CENTRE;
    }
    canvas.block(block, box, align);
  }
}
