package wallbook.render.drawing;

/** Makes any text safe for an XML document. */
final class PlainText {
  private static final String REPLACEMENT = "\uFFFD";

  private PlainText() {}

  /**
   * Line breaks and tabs become spaces; characters that XML 1.0 cannot carry (section 2.2, Char)
   * and controls that turn the reading direction become the replacement character.
   */
  static String clean(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            code -> {
              if (code == '\n' || code == '\r' || code == '\t' || code == 0x2028) {
                clean.append(' ');
              } else if (isPrintable(code)) {
                clean.appendCodePoint(code);
              } else {
                clean.append(REPLACEMENT);
              }
            });
    return clean.toString();
  }

  /** Cleaned text with the five characters of XML markup escaped. */
  static String xml(String text) {
    return clean(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  private static boolean isPrintable(int code) {
    boolean control = Character.isISOControl(code);
    boolean surrogate = code >= 0xD800 && code <= 0xDFFF;
    boolean turnsDirection =
        (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
    boolean noCharacter = (code & 0xFFFE) == 0xFFFE;
    return !control && !surrogate && !turnsDirection && !noCharacter;
  }
}
