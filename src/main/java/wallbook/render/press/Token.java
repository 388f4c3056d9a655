package wallbook.render.press;

import java.util.List;
import java.util.Locale;

/**
 * A word of a stylesheet's value.
 *
 * @param text name, string or hash without its marks; for a number its unit in lower case, empty if
 *     it has none
 * @param number value of a number, else 0
 * @param inside what stands between the brackets of a function
 */
record Token(Kind kind, String text, float number, List<Token> inside) {
  enum Kind {
    NAME,
    STRING,
    HASH,
    NUMBER,
    FUNCTION,
    SIGN
  }

  Token {
    inside = List.copyOf(inside);
  }

  static Token of(Kind kind, String text) {
    return new Token(kind, text, 0, List.of());
  }

  boolean is(String name) {
    return kind == Kind.NAME && text.equals(name);
  }

  boolean isSign(String sign) {
    return kind == Kind.SIGN && text.equals(sign);
  }

  /** The name in lower case, or an empty text for any other word. */
  String name() {
    return kind == Kind.NAME ? text.toLowerCase(Locale.ROOT) : "";
  }
}
