package wallbook.render.press;

import java.util.Arrays;
import java.util.zip.Deflater;
import wallbook.render.PdfBytes;

/**
 * Writes the operators of one content stream (ISO 32000-1, annex A), to the hundredth of a point,
 * in as few bytes as may be, since packing them takes longest. Says a colour, font or spacing only
 * where it changes, draws rectangles side by side as one, and lets text go on from mark to mark.
 */
final class Pen {
  private static final int HUNDREDTHS = 100;

  private final PdfBytes out = new PdfBytes(1 << 14);
  private int colour = Integer.MIN_VALUE;
  private boolean fills;
  private long[] waiting = new long[4];
  private long[] drawn = new long[4];
  private boolean inText;
  private boolean marked;
  private boolean markedInText;
  private int face = -1;
  private float size;
  private float spacing;
  private long lineX;
  private long lineY;

  /** What is drawn from here on is no content, such as {@code /Type/Pagination}. */
  void artifact(String properties) {
    unmark();
    text(properties.isEmpty() ? "/Artifact BMC\n" : "/Artifact<<" + properties + ">>BDC\n");
    marked = true;
  }

  /** What is drawn from here on belongs to an element of the structure. */
  void mark(String type, int number) {
    unmark();
    beginMark(type, number);
  }

  /** The same for glyphs alone; whatever else is drawn ends it. */
  void markText(String type, int number) {
    if (!markedInText) {
      unmark();
    } else {
      text("EMC\n");
    }
    beginText();
    beginMark(type, number);
    markedInText = true;
  }

  private void beginMark(String type, int number) {
    out.write('/');
    text(type);
    text("<</MCID ");
    out.integer(number);
    text(">>BDC\n");
    marked = true;
  }

  void unmark() {
    endText();
    fill();
    if (marked) {
      text("EMC\n");
      marked = false;
    }
  }

  /** A filled rectangle; the corner is its lower left. */
  void rectangle(float x, float y, float wide, float high, int rgb) {
    endText();
    if (rgb != colour) {
      fill();
      colour(rgb);
    }
    long left = hundredths(x);
    long bottom = hundredths(y);
    long width = hundredths(wide);
    long height = hundredths(high);
    // Rounding may part what touches.
    if (fills
        && bottom == waiting[1]
        && height == waiting[3]
        && Math.abs(waiting[0] + waiting[2] - left) <= 1) {
      waiting[2] = left + width - waiting[0];
      return;
    }
    if (fills) {
      outline();
    } else {
      Arrays.fill(drawn, 0);
    }
    waiting[0] = left;
    waiting[1] = bottom;
    waiting[2] = width;
    waiting[3] = height;
    fills = true;
  }

  /** Writes the rectangle that waited for others beside it, unless it is the last one again. */
  private void outline() {
    if (Arrays.equals(waiting, drawn)) {
      return;
    }
    for (long measure : waiting) {
      fixed(measure);
    }
    text("re\n");
    long[] last = drawn;
    drawn = waiting;
    waiting = last;
  }

  private void fill() {
    if (fills) {
      outline();
      text("f\n");
      fills = false;
    }
  }

  /** What is filled and written from here on has a colour. */
  void colour(int rgb) {
    if (rgb != colour) {
      components(rgb);
      text("rg\n");
      colour = rgb;
    }
  }

  /** Red, green and blue as shares. */
  void components(int rgb) {
    thousandths(rgb >> 16 & 0xFF);
    thousandths(rgb >> 8 & 0xFF);
    thousandths(rgb & 0xFF);
  }

  private void thousandths(int part) {
    int share = (part * 1000 + 127) / 255;
    if (share == 0 || share == 1000) {
      text(share == 0 ? "0 " : "1 ");
    } else {
      out.write('.');
      out.write('0' + share / 100);
      out.write('0' + share / 10 % 10);
      out.write('0' + share % 10);
      out.write(' ');
    }
  }

  /** Begins a run of glyphs of one look at a point of the base line; {@link #endGlyphs} ends it. */
  void beginGlyphs(float x, float y, int number, float points, float letterSpacing, int rgb) {
    fill();
    beginText();
    colour(rgb);
    font(number, points, letterSpacing);
    long toX = hundredths(x);
    long toY = hundredths(y);
    fixed(toX - lineX);
    fixed(toY - lineY);
    text("Td(");
    lineX = toX;
    lineY = toY;
  }

  private void beginText() {
    if (!inText) {
      text("BT\n");
      inText = true;
      lineX = 0;
      lineY = 0;
    }
  }

  private void font(int number, float points, float letterSpacing) {
    if (number != face || points != size) {
      out.write('/');
      out.write('F');
      out.integer(number);
      out.write(' ');
      number(points);
      text("Tf\n");
      face = number;
      size = points;
    }
    if (letterSpacing != spacing) {
      number(letterSpacing);
      text("Tc\n");
      spacing = letterSpacing;
    }
  }

  /** The same, turned about the point by an angle that its sine and cosine tell. */
  void beginTurnedGlyphs(
      float x, float y, float sine, float cosine, int number, float points, int rgb) {
    endText();
    fill();
    text("BT\n");
    inText = true;
    colour(rgb);
    font(number, points, 0);
    fine(cosine);
    fine(sine);
    fine(-sine);
    fine(cosine);
    numbers(x, y);
    text("Tm(");
  }

  /** Two bytes of a string, those escaped that would end it or be read otherwise (7.3.4.2). */
  void glyph(int glyph) {
    half(glyph >> 8 & 0xFF);
    half(glyph & 0xFF);
  }

  private void half(int half) {
    if (half == '(' || half == ')' || half == '\\') {
      out.write('\\');
      out.write(half);
    } else if (half == '\r') {
      text("\\r");
    } else {
      out.write(half);
    }
  }

  void endGlyphs() {
    text(")Tj\n");
  }

  void endText() {
    if (inText) {
      if (markedInText) {
        text("EMC\n");
        marked = false;
        markedInText = false;
      }
      text("ET\n");
      inText = false;
    }
  }

  /** Keeps what is set now, to be taken back by {@link #restore}. */
  void save() {
    endText();
    fill();
    text("q\n");
  }

  /** Takes back what was set when {@link #save} was called. */
  void restore() {
    endText();
    text("Q\n");
    colour = Integer.MIN_VALUE;
    face = -1;
    spacing = 0;
  }

  /** Operands of an operator that is written next. */
  void numbers(float... operands) {
    for (float operand : operands) {
      number(operand);
    }
  }

  void number(float operand) {
    fixed(hundredths(operand));
  }

  private static long hundredths(float value) {
    return Math.round((double) value * HUNDREDTHS);
  }

  private void fixed(long hundredths) {
    long rest = hundredths;
    if (rest < 0) {
      out.write('-');
      rest = -rest;
    }
    out.integer(rest / HUNDREDTHS);
    int fraction = (int) (rest % HUNDREDTHS);
    if (fraction > 0) {
      out.write('.');
      out.write('0' + fraction / 10);
      if (fraction % 10 > 0) {
        out.write('0' + fraction % 10);
      }
    }
    out.write(' ');
  }

  /** A share such as a sine, to five decimals. */
  private void fine(float share) {
    long rest = Math.round(share * 100_000d);
    if (rest < 0) {
      out.write('-');
      rest = -rest;
    }
    out.integer(rest / 100_000);
    out.write('.');
    for (long unit = 10_000; unit > 0; unit /= 10) {
      out.write((int) ('0' + rest / unit % 10));
    }
    out.write(' ');
  }

  /** An operator, or anything else in ASCII. */
  void text(String ascii) {
    out.text(ascii);
  }

  /** All that was written, packed by Deflate; the pen is empty again. */
  byte[] packed(Deflater deflater) {
    byte[] packed = out.packed(deflater);
    clear();
    return packed;
  }

  boolean isEmpty() {
    return out.length() == 0;
  }

  private void clear() {
    out.clear();
    colour = Integer.MIN_VALUE;
    fills = false;
    inText = false;
    marked = false;
    markedInText = false;
    face = -1;
    size = 0;
    spacing = 0;
  }
}
