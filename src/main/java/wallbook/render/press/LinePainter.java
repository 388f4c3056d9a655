package wallbook.render.press;

import java.util.List;
import java.util.OptionalInt;
import wallbook.render.Tag;
import wallbook.render.Typeface;

/** Writes one line on a page. Lengths are in points from the page's upper left corner. */
final class LinePainter {
  private static final float UNDERLINE_DOWN = 0.12f;
  private static final float UNDERLINE_WIDTH = 0.06f;

  /** From one dot of a leader to the next, as a share of the size. */
  private static final float DOT_STEP = 0.55f;

  private final Sheet sheet;
  private final Line line;
  private final Passage text;
  private final float left;
  private final float base;

  /**
   * @param left edge of the line's column
   * @param base its base line
   */
  LinePainter(Sheet sheet, Line line, float left, float base) {
    this.sheet = sheet;
    this.line = line;
    this.text = line.text();
    this.left = left;
    this.base = base;
  }

  /** Paints what lies behind the text: grounds of inline elements, underlines. */
  void ground() {
    float x = left + line.left();
    for (int i = line.from(); i < line.to(); ) {
      Span span = text.span(i);
      float from = x;
      int end = i;
      while (end < line.to() && sameGround(text.span(end), span)) {
        x += text.width(end, line.available());
        if (text.character(end) == Passage.ATOM && text.atom(end) instanceof Atom.Piece piece) {
          ground(piece, x - text.width(end, line.available()));
        }
        end++;
      }
      if (span.box() != null) {
        box(span.box(), from, x);
      }
      if (span.type().underlined()) {
        float size = span.type().size();
        float top = base - span.type().raise() + UNDERLINE_DOWN * size;
        sheet.rectangle(from, top, x - from, UNDERLINE_WIDTH * size, span.type().colour());
      }
      i = end;
    }
  }

  @SuppressWarnings("ReferenceEquality") // Two boxes or spans may look alike and be apart.
  private static boolean sameGround(Span one, Span other) {
    return one.box() == other.box()
        && one.type().underlined() == other.type().underlined()
        && (one == other || !one.type().underlined() || one.type().size() == other.type().size());
  }

  private void box(Span.InlineBox box, float from, float to) {
    BoxStyle style = box.style();
    float size = box.type().size();
    float middle = base - box.type().raise();
    float top = middle - Typeface.ASCENT * size - style.inset(BoxStyle.TOP, 0);
    float bottom = middle + Typeface.DESCENT * size + style.inset(BoxStyle.BOTTOM, 0);
    new Decor(style, 0, to - from).paint(sheet, from, top, bottom, true, true);
  }

  private void ground(Atom.Piece piece, float x) {
    float from = x + piece.box().margin().get(BoxStyle.LEFT).of(line.available());
    float width =
        piece.widthIn(line.available())
            + piece.box().inset(BoxStyle.LEFT, line.available())
            + piece.box().inset(BoxStyle.RIGHT, line.available());
    float top = base - line.above();
    if (piece.box().isSeen()) {
      new Decor(piece.box(), 0, width).paint(sheet, from, top, base + line.below(), true, true);
    }
    inner(piece, x, true);
  }

  /** Paints the lines of a piece, the last on the base line. */
  private void inner(Atom.Piece piece, float x, boolean ground) {
    List<Line> lines = piece.lines(line.available());
    float y = base;
    for (int i = lines.size() - 1; i >= 0; i--) {
      y -= i == lines.size() - 1 ? lines.get(i).above() : lines.get(i).height();
    }
    for (Line one : lines) {
      if (ground) {
        one.ground(sheet, x + piece.left(line.available()), y);
      } else {
        one.ink(sheet, x + piece.left(line.available()), y);
      }
      y += one.height();
    }
  }

  /** Writes the text. */
  void ink() {
    sheet.anchors(text.anchors(line.from(), line.to() + 1), base - line.above());
    float x = left + line.left();
    for (int i = line.from(); i < line.to(); ) {
      Atom atom = text.character(i) == Passage.ATOM ? text.atom(i) : null;
      if (atom instanceof Atom.Leader || atom instanceof Atom.Folio) {
        tailOrLater(i);
        return;
      } else if (atom != null) {
        atom(atom, x);
        x += text.width(i, line.available());
        i++;
      } else {
        int end = runEnd(i);
        x = run(i, end, x);
        i = end;
      }
    }
  }

  private void atom(Atom atom, float x) {
    if (atom instanceof Atom.Piece piece) {
      inner(piece, x, false);
    } else if (atom instanceof Atom.Picture picture) {
      PictureSize size =
          PictureSize.of(picture.image(), picture.box(), line.available(), Float.MAX_VALUE);
      sheet.picture(
          picture.image(), picture.tag(), x, base - size.height(), size.width(), size.height());
    }
  }

  private int runEnd(int from) {
    Span span = text.span(from);
    int end = from + 1;
    while (end < line.to() && text.character(end) != Passage.ATOM && goesOn(span, text.span(end))) {
      end++;
    }
    return end;
  }

  /** Whether a span is written like another, so that nothing has to be said between them. */
  @SuppressWarnings("ReferenceEquality") // Two tags or links may look alike and be apart.
  private static boolean goesOn(Span one, Span next) {
    TypeStyle type = one.type();
    TypeStyle other = next.type();
    return one == next
        || one.tag() == next.tag()
            && one.link() == next.link()
            && type.face() == other.face()
            && type.size() == other.size()
            && type.letterSpacing() == other.letterSpacing()
            && type.colour() == other.colour()
            && type.raise() == other.raise();
  }

  /** Writes characters of one look; gives where they end. */
  private float run(int from, int to, float x) {
    Span span = text.span(from);
    begin(span, x);
    float at = x;
    for (int i = from; i < to; i++) {
      glyph(span, text.character(i));
      at += text.width(i);
    }
    // A reader program takes the words at both sides of a line's end for two.
    if (to == line.to() && to < text.length() && isGap(to)) {
      glyph(span, ' ');
    }
    sheet.pen().endGlyphs();
    if (span.link() != null) {
      sheet.link(span.link(), x, base - span.above(), at, base + span.below());
    }
    return at;
  }

  private boolean isGap(int i) {
    return text.isLooseSpace(i) || text.character(i) == Passage.LINE_END;
  }

  private void begin(Span span, float x) {
    sheet.mark(span.tag());
    TypeStyle type = span.type();
    sheet
        .pen()
        .beginGlyphs(
            x,
            sheet.up(base - type.raise()),
            sheet.book().typecase().number(type.face()),
            type.size(),
            type.letterSpacing(),
            type.colour());
  }

  private void glyph(Span span, int character) {
    if (character != Passage.ZERO_WIDTH_SPACE) {
      sheet.pen().glyph(sheet.book().typecase().glyph(span.type().face(), span.face(), character));
    }
  }

  private void tailOrLater(int from) {
    boolean known = true;
    Tag tag = text.span(from).tag();
    for (int i = from; i < line.to(); i++) {
      if (text.character(i) == Passage.ATOM && text.atom(i) instanceof Atom.Folio folio) {
        known &= sheet.book().anchors().page(folio.anchor()).isPresent();
        tag = text.span(i).tag();
      }
    }
    if (known) {
      sheet.mark(tag);
      tail(from);
    } else if (!sheet.repeats()) {
      sheet.later(this, from, tag);
    }
  }

  /** Writes the line from a leader or a page number on; the number has to be known by now. */
  void tail(int from) {
    boolean leads = text.atom(from) instanceof Atom.Leader;
    StringBuilder rest = new StringBuilder();
    Span span = text.span(line.to() - 1);
    for (int i = from; i < line.to(); i++) {
      if (text.character(i) != Passage.ATOM) {
        rest.appendCodePoint(text.character(i));
      } else if (text.atom(i) instanceof Atom.Folio folio) {
        OptionalInt page = sheet.book().anchors().page(folio.anchor());
        rest.append(page.isPresent() ? Integer.toString(page.getAsInt()) : "");
      }
    }
    float start = left + line.left();
    for (int i = line.from(); i < from; i++) {
      start += text.width(i, line.available());
    }
    float width = 0;
    for (int i = 0; i < rest.length(); i++) {
      width += span.face().advance(rest.charAt(i)) * span.type().size();
    }
    float x = leads ? left + line.available() - width : start;
    begin(span, x);
    rest.codePoints().forEach(character -> glyph(span, character));
    sheet.pen().endGlyphs();
    if (leads) {
      dots(text.span(from), start, x);
    }
  }

  /** Dots between two places; those of all lines stand below each other. */
  private void dots(Span span, float from, float to) {
    float size = span.type().size();
    float step = DOT_STEP * size;
    float right = left + line.available();
    int last = (int) Math.ceil((right - to + size / 4) / step);
    int first = (int) Math.floor((right - from - size / 4) / step);
    if (first <= last) {
      return;
    }
    float dot = span.face().advance('.') * size;
    sheet.artifact();
    sheet
        .pen()
        .beginGlyphs(
            right - first * step,
            sheet.up(base),
            sheet.book().typecase().number(span.type().face()),
            size,
            step - dot,
            span.type().colour());
    for (int i = first; i > last; i--) {
      glyph(span, '.');
    }
    sheet.pen().endGlyphs();
  }
}
