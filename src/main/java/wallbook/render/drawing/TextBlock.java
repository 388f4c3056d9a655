package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;

/** Some lines of text in one type, with the size of the box they fill. */
record TextBlock(List<String> lines, Item.Type type) {
  private static final double SIDE_MM = 0.3;

  TextBlock {
    lines = List.copyOf(lines);
  }

  /**
   * Lines no wider than allowed; a broken line is broken evenly, so that no word stands alone at
   * its end.
   */
  static TextBlock wrapped(List<String> lines, Item.Type type, double maxWidthMm) {
    List<String> wrapped = new ArrayList<>();
    for (String line : lines) {
      wrapped.addAll(evenly(line, type, maxWidthMm - 2 * SIDE_MM));
    }
    return new TextBlock(wrapped, type);
  }

  private static List<String> evenly(String line, Item.Type type, double maxWidthMm) {
    List<String> best = TextMeasure.wrap(line, type, maxWidthMm);
    double enough = maxWidthMm;
    double tooNarrow = maxWidthMm / 2;
    for (int halving = 0; best.size() > 1 && halving < 6; halving++) {
      double middle = (enough + tooNarrow) / 2;
      List<String> tried = TextMeasure.wrap(line, type, middle);
      if (tried.size() == best.size() && keepsWords(tried, best)) {
        best = tried;
        enough = middle;
      } else {
        tooNarrow = middle;
      }
    }
    return best;
  }

  /** Whether the narrower lines break no word that the wider lines keep whole. */
  private static boolean keepsWords(List<String> narrow, List<String> wide) {
    return String.join(" ", narrow).equals(String.join(" ", wide));
  }

  double widthMm() {
    return 2 * SIDE_MM
        + lines.stream().mapToDouble(line -> TextMeasure.widthMm(line, type)).max().orElse(0);
  }

  double heightMm() {
    return TextMeasure.ascentMm(type)
        + TextMeasure.descentMm(type)
        + Math.max(0, lines.size() - 1) * TextMeasure.leadingMm(type);
  }

  /** The words of this block inside a box of its size. */
  List<Item> at(Box box, Item.Align align) {
    double x =
        switch (align) {
          case LEFT -> box.left() + SIDE_MM;
          case CENTRE -> box.centre().x();
          case RIGHT -> box.right() - SIDE_MM;
        };
    List<Item> words = new ArrayList<>();
    double y = box.top() + TextMeasure.ascentMm(type);
    for (String line : lines) {
      words.add(new Item.Words(new Pt(x, y), line, type, align, 0));
      y += TextMeasure.leadingMm(type);
    }
    return words;
  }
}
