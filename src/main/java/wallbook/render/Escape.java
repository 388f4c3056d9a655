package wallbook.render;

import java.util.HexFormat;
import java.util.regex.Pattern;

/** Writes a text so that it prints as itself, whatever it holds. */
final class Escape {
  private static final int REPLACEMENT = 0xFFFD;
  private static final int CSS_DIGITS = 6;

  /** ASCII but letters, digits, comma and space: what Markdown or HTML may take for a mark. */
  private static final String MARKS = "!\"#$%&'()*+-./:;<=>?@[\\]^_`{|}~";

  /** The noncharacters from here on are 32. */
  private static final char FIRST_STAND_IN = '\uFDD0';

  private static final HexFormat HEX = HexFormat.of().withUpperCase();
  private static final Pattern LINE_END = Pattern.compile("\\R");

  private Escape() {}

  /**
   * A text for a Markdown template, safe in running text, table cells, headings, link texts, raw
   * HTML and attribute values alike: each ASCII character that may be a mark of Markdown or HTML is
   * put as a stand-in, a noncharacter that no text can hold and that Markdown takes for a letter;
   * {@link #stoodFor} and {@link #htmlStoodFor} undo that. Space at an end and tabs become numeric
   * character references, which Markdown does not strip.
   *
   * <p>Every kind of line end becomes a line feed, which prints as a space unless the stylesheet
   * keeps lines. Other control characters (save tab), unpaired surrogates and noncharacters, which
   * no XML may hold, become U+FFFD.
   */
  static String markdown(String original) {
    String text = withLineFeeds(original);
    StringBuilder out = new StringBuilder(text.length() + 16);
    int end = text.length();
    for (int i = 0; i < end; i += Character.charCount(text.codePointAt(i))) {
      int c = printable(text.codePointAt(i));
      boolean inner = i > 0 && i + 1 < end;
      if (isPlain(c) || (c == ' ' && inner)) {
        out.appendCodePoint(c);
      } else if (MARKS.indexOf(c) >= 0) {
        out.append((char) (FIRST_STAND_IN + MARKS.indexOf(c)));
      } else {
        out.append("&#").append(c).append(';');
      }
    }
    return out.toString();
  }

  /** A text with what its stand-ins stood for. */
  static String stoodFor(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      out.append(isStandIn(c) ? MARKS.charAt(c - FIRST_STAND_IN) : c);
    }
    return out.toString();
  }

  /** HTML with what its stand-ins stood for, in text and quoted attribute values. */
  static String htmlStoodFor(String html) {
    StringBuilder out = new StringBuilder(html.length() + html.length() / 8);
    for (int i = 0; i < html.length(); i++) {
      char c = html.charAt(i);
      if (isStandIn(c)) {
        html(MARKS.charAt(c - FIRST_STAND_IN), out);
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }

  private static boolean isStandIn(char c) {
    return c >= FIRST_STAND_IN && c < FIRST_STAND_IN + MARKS.length();
  }

  /** A text for HTML, between tags and in quoted attribute values. */
  static String html(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().map(Escape::printable).forEach(c -> html(c, out));
    return out.toString();
  }

  private static void html(int c, StringBuilder out) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&#34;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(c);
    }
  }

  /**
   * The inside of a CSS string. A reader of CSS takes one blank after a character's number for its
   * end, so there is one, lest a blank of the text be taken.
   */
  static String css(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .map(Escape::printable)
        .forEach(
            c -> {
              if (isPlain(c) || c == ' ') {
                out.appendCodePoint(c);
              } else {
                out.append('\\').append(HEX.toHexDigits(c, CSS_DIGITS)).append(' ');
              }
            });
    return out.toString();
  }

  /** A name for an anchor: ASCII letters and digits stay, all else is told apart by its code. */
  static String anchor(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (c < 128 && Character.isLetterOrDigit(c)) {
                out.appendCodePoint(c);
              } else {
                out.append('-').append(Integer.toHexString(c)).append('-');
              }
            });
    return out.toString();
  }

  /** Most texts have one line, for which the search of every kind of line end is too dear. */
  private static String withLineFeeds(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c >= '\n' && c <= '\r') || c == '\u0085' || c == '\u2028' || c == '\u2029') {
        return LINE_END.matcher(text).replaceAll("\n");
      }
    }
    return text;
  }

  private static boolean isPlain(int c) {
    return c == ','
        || (c < 128
            ? Character.isLetterOrDigit(c)
            : !Character.isWhitespace(c) && !Character.isSpaceChar(c));
  }

  /** The character itself where XML 1.0 allows it, else the replacement character. */
  static int printable(int c) {
    boolean allowed = c == '\t' || c == '\n' || (c >= 0x20 && c < 0x7F) || c >= 0xA0;
    boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
    boolean nonCharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    return allowed && !surrogate && !nonCharacter ? c : REPLACEMENT;
  }
}
