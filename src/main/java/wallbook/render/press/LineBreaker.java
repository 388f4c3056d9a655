package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks a passage into lines, each as full as it may be. A word that is wider than a line is torn
 * where the line ends, whatever the stylesheet says: no text runs over its column.
 */
final class LineBreaker {
  /** What rounding may add to a line, in points. */
  private static final float SLACK = 0.01f;

  private final Passage text;
  private final BlockStyle block;
  private final float width;
  private final List<Line> lines = new ArrayList<>(4);

  private LineBreaker(Passage text, BlockStyle block, float width) {
    this.text = text;
    this.block = block;
    this.width = width;
  }

  /** The lines of a passage in a column of some width. */
  static List<Line> lines(Passage text, BlockStyle block, float width) {
    return new LineBreaker(text, block, width).broken();
  }

  private List<Line> broken() {
    int start = 0;
    while (start < text.length()) {
      start = line(start);
    }
    return lines;
  }

  /** Sets the line that begins at a place; gives where the next begins. */
  private int line(int start) {
    float room = width - (lines.isEmpty() ? block.indent().of(width) : 0);
    int from = start;
    while (from < text.length() && text.isLooseSpace(from)) {
      from++;
    }
    float used = 0;
    int end = from;
    for (int i = from; i < text.length(); i++) {
      if (text.character(i) == Passage.LINE_END) {
        add(from, i);
        return i + 1;
      }
      if (i > from && text.breaksBefore(i)) {
        end = i;
      }
      float wide = text.width(i, width);
      if (used + wide > room + SLACK && i > from && !text.isLooseSpace(i)) {
        int at = end > from ? end : tear(from, i);
        if (at > from) {
          add(from, at);
          return at;
        }
      }
      used += wide;
    }
    add(from, text.length());
    return text.length();
  }

  /** Where to tear a word that doesn't fit, at the last place before one; the begin if nowhere. */
  private int tear(int from, int before) {
    for (int i = before; i > from; i--) {
      if (Breaks.tearable(text.character(i))) {
        return i;
      }
    }
    return from;
  }

  private void add(int from, int to) {
    int seen = to;
    while (seen > from && text.isLooseSpace(seen - 1)) {
      seen--;
    }
    float used = 0;
    float above = text.strut().above();
    float below = text.strut().below();
    Span last = null;
    boolean leads = false;
    for (int i = from; i < Math.max(seen, from + 1) && i < text.length(); i++) {
      used += i < seen ? text.width(i, width) : 0;
      if (text.span(i) != last) {
        last = text.span(i);
        above = Math.max(above, last.above());
        below = Math.max(below, last.below());
      }
      if (text.character(i) == Passage.ATOM) {
        leads |= text.atom(i) instanceof Atom.Leader;
        above = Math.max(above, height(text.atom(i)));
        below = Math.max(below, depth(text.atom(i)));
      }
    }
    float indent = lines.isEmpty() ? block.indent().of(width) : 0;
    float spare = Math.max(0, width - indent - used);
    float left =
        leads
            ? 0
            : switch (block.align()) {
              case LEFT -> 0;
              case CENTER -> spare / 2;
              case RIGHT -> spare;
            };
    lines.add(new Line(text, from, seen, indent + left, used, width, above, below));
  }

  private float height(Atom atom) {
    if (atom instanceof Atom.Picture picture) {
      return PictureSize.of(picture.image(), picture.box(), width, Float.MAX_VALUE).height();
    } else if (atom instanceof Atom.Piece piece) {
      List<Line> inner = piece.lines(width);
      float around =
          piece.box().inset(BoxStyle.TOP, width) + piece.box().margin().get(BoxStyle.TOP).of(width);
      // Its last base line stands on that of the line (CSS 2.1, 10.8.1).
      float stack = 0;
      for (Line line : inner) {
        stack += line.height();
      }
      return around + stack - (inner.isEmpty() ? 0 : inner.get(inner.size() - 1).below());
    }
    return 0;
  }

  private float depth(Atom atom) {
    if (atom instanceof Atom.Piece piece) {
      List<Line> inner = piece.lines(width);
      float around =
          piece.box().inset(BoxStyle.BOTTOM, width)
              + piece.box().margin().get(BoxStyle.BOTTOM).of(width);
      return around + (inner.isEmpty() ? 0 : inner.get(inner.size() - 1).below());
    }
    return 0;
  }
}
