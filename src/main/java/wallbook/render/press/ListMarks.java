package wallbook.render.press;

import java.util.Optional;
import org.jsoup.nodes.Element;

/** What stands beside the items of a list. */
final class ListMarks {
  /** Room between mark and text, as a share of the size of type. */
  static final float GAP = 0.5f;

  private static final int LETTERS = 26;

  private ListMarks() {}

  /** The mark of an item, such as a dot or {@code 3.}; nothing if the list has none. */
  static Optional<String> text(Branch item) {
    return switch (item.style().block().listMark()) {
      case NONE -> Optional.empty();
      case DISC -> Optional.of("•");
      case CIRCLE -> Optional.of("◦");
      case SQUARE -> Optional.of("▪");
      case DECIMAL -> Optional.of(number(item) + ".");
      case LOWER_ALPHA -> Optional.of(letter('a', number(item)) + ".");
      case UPPER_ALPHA -> Optional.of(letter('A', number(item)) + ".");
    };
  }

  private static int number(Branch item) {
    Element list = item.element().parent();
    String start = list == null ? "" : list.attr("start");
    int first = start.matches("\\d{1,6}") ? Integer.parseInt(start) : 1;
    return first + item.number() - 1;
  }

  private static String letter(char first, int number) {
    StringBuilder letters = new StringBuilder();
    for (int left = number; left > 0; left = (left - 1) / LETTERS) {
      letters.insert(0, (char) (first + (left - 1) % LETTERS));
    }
    return letters.toString();
  }
}
