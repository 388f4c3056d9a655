package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Walks through the text of a stylesheet. */
final class Scanner {
  private final String text;
  private int at;

  Scanner(String text) {
    this.text = text;
  }

  boolean atEnd() {
    return at >= text.length();
  }

  char peek() {
    return atEnd() ? '\0' : text.charAt(at);
  }

  /** Goes over one character if it is the one that is wanted. */
  boolean take(char wanted) {
    if (peek() == wanted && !atEnd()) {
      at++;
      return true;
    }
    return false;
  }

  /** Goes over white space and comments. */
  void skipSpace() throws StyleProblem {
    while (!atEnd()) {
      if (isSpace(peek())) {
        at++;
      } else if (text.startsWith("/*", at)) {
        int end = text.indexOf("*/", at + 2);
        if (end < 0) {
          throw new StyleProblem("a comment has no end", line(at));
        }
        at = end + 2;
      } else {
        return;
      }
    }
  }

  /** The text up to one of some characters, which is not gone over, comments left out. */
  String upTo(String ends) throws StyleProblem {
    StringBuilder taken = new StringBuilder();
    while (!atEnd() && ends.indexOf(peek()) < 0) {
      if (text.startsWith("/*", at)) {
        skipSpace();
        taken.append(' ');
      } else if (peek() == '"' || peek() == '\'') {
        int from = at;
        string();
        taken.append(text, from, at);
      } else {
        taken.append(text.charAt(at++));
      }
    }
    return taken.toString();
  }

  /** A name, or an empty text if none stands here. */
  String name() {
    int from = at;
    while (!atEnd() && isNameCharacter(peek())) {
      at++;
    }
    return text.substring(from, at);
  }

  /** The words of a value, to its end. */
  List<Token> tokens() throws StyleProblem {
    List<Token> tokens = new ArrayList<>();
    skipSpace();
    while (!atEnd() && peek() != ')') {
      tokens.add(token());
      skipSpace();
    }
    return tokens;
  }

  private Token token() throws StyleProblem {
    char c = peek();
    if (c == '"' || c == '\'') {
      return Token.of(Token.Kind.STRING, string());
    } else if (c == '#') {
      at++;
      return Token.of(Token.Kind.HASH, name());
    } else if (startsNumber()) {
      return number();
    } else if (isNameCharacter(c)) {
      String name = name();
      if (!take('(')) {
        return Token.of(Token.Kind.NAME, name.toLowerCase(Locale.ROOT));
      }
      List<Token> inside = name.equals("url") ? List.of(address()) : tokens();
      if (!take(')')) {
        throw new StyleProblem("a bracket is not closed", line(at));
      }
      return new Token(Token.Kind.FUNCTION, name.toLowerCase(Locale.ROOT), 0, inside);
    }
    at++;
    return Token.of(Token.Kind.SIGN, String.valueOf(c));
  }

  private Token address() throws StyleProblem {
    return Token.of(Token.Kind.STRING, upTo(")"));
  }

  private boolean startsNumber() {
    int i = at;
    if (i < text.length() && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
      i++;
    }
    if (i < text.length() && text.charAt(i) == '.') {
      i++;
    }
    return i < text.length() && isDigit(text.charAt(i));
  }

  private Token number() throws StyleProblem {
    int from = at++;
    while (!atEnd() && (isDigit(peek()) || peek() == '.')) {
      at++;
    }
    float value;
    try {
      value = Float.parseFloat(text.substring(from, at));
    } catch (NumberFormatException e) {
      throw new StyleProblem("no number: " + text.substring(from, at), line(from));
    }
    String unit = take('%') ? "%" : name().toLowerCase(Locale.ROOT);
    return new Token(Token.Kind.NUMBER, unit, value, List.of());
  }

  private String string() throws StyleProblem {
    int from = at;
    char quote = text.charAt(at++);
    StringBuilder string = new StringBuilder();
    while (!atEnd() && peek() != quote && peek() != '\n') {
      if (peek() == '\\') {
        at++;
        escape(string);
      } else {
        string.append(text.charAt(at++));
      }
    }
    if (!take(quote)) {
      throw new StyleProblem("a string has no end", line(from));
    }
    return string.toString();
  }

  private void escape(StringBuilder into) {
    int from = at;
    while (at < text.length() && at - from < 6 && Character.digit(text.charAt(at), 16) >= 0) {
      at++;
    }
    if (at > from) {
      int code = Integer.parseInt(text.substring(from, at), 16);
      into.appendCodePoint(Character.isValidCodePoint(code) && code > 0 ? code : 0xFFFD);
      // The space that ends an escape of fewer than six digits is part of it.
      if (at - from < 6 || isSpace(peek())) {
        take(' ');
      }
    } else if (!atEnd() && peek() != '\n') {
      into.append(text.charAt(at++));
    } else if (!atEnd()) {
      at++;
    }
  }

  /** The line that a place is on, for a complaint. */
  String line(int place) {
    int from = text.lastIndexOf('\n', Math.max(0, Math.min(place, text.length()) - 1)) + 1;
    int to = text.indexOf('\n', from);
    return text.substring(from, to < 0 ? text.length() : to);
  }

  String line() {
    return line(at);
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r' || c == '\f';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isNameCharacter(char c) {
    return c >= 'a' && c <= 'z'
        || c >= 'A' && c <= 'Z'
        || isDigit(c)
        || c == '-'
        || c == '_'
        || c >= 0x80;
  }
}
