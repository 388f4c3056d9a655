package wallbook.render.press;

import java.util.List;
import wallbook.render.Tag;

/** What stands in a line without being a character of it. */
sealed interface Atom {
  /** Room at the begin or end of an inline element. */
  record Edge(float width) implements Atom {}

  /** Dots, as many as fit. */
  record Leader() implements Atom {}

  /** The number of the page that an anchor is on. */
  record Folio(String anchor) implements Atom {}

  /** A drawing or photograph. */
  record Picture(Image image, BoxStyle box, Tag tag) implements Atom {}

  /** A piece of text that is set as one block. */
  record Piece(Passage text, BoxStyle box, BlockStyle block) implements Atom {
    float widthIn(float available) {
      float around = insets(available);
      float width =
          box.width().auto()
              ? Math.min(text.widest(), Math.max(0, available - around))
              : box.width().of(available);
      return width;
    }

    /** Margins, borders and paddings of both sides. */
    float insets(float available) {
      return left(available)
          + box.inset(BoxStyle.RIGHT, available)
          + box.margin().get(BoxStyle.RIGHT).of(available);
    }

    float left(float available) {
      return box.inset(BoxStyle.LEFT, available) + box.margin().get(BoxStyle.LEFT).of(available);
    }

    List<Line> lines(float available) {
      return LineBreaker.lines(text, block, widthIn(available));
    }
  }
}
