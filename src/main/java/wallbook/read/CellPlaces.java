package wallbook.read;

import wallbook.finding.SourcePosition;

/** Finds where the cells of a row begin; the parser tells only where the row does. */
final class CellPlaces {
  private final String text;
  private final char delimiter;
  private final String file;
  private int at;
  private int counted;
  private int line = 1;
  private int lineStart;

  CellPlaces(String text, char delimiter, String file) {
    this.text = text;
    this.delimiter = delimiter;
    this.file = file;
  }

  /** Goes to the row that begins at the given index, or after the empty lines there. */
  void beginRow(int index) {
    at = index;
    while (at < text.length() && isBreak(text.charAt(at))) {
      at++;
    }
  }

  /** Where the next cell of the row begins; then goes past it. */
  SourcePosition next() {
    SourcePosition here = position();
    boolean quoted = false;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == delimiter || isBreak(c))) {
        break;
      }
      at++;
    }
    at++;
    return here;
  }

  private SourcePosition position() {
    int end = Math.min(at, text.length());
    for (; counted < end; counted++) {
      boolean lineEnds =
          text.charAt(counted) == '\n'
              || (text.charAt(counted) == '\r'
                  && (counted + 1 == text.length() || text.charAt(counted + 1) != '\n'));
      if (lineEnds) {
        line++;
        lineStart = counted + 1;
      }
    }
    return new SourcePosition(file, line, text.codePointCount(lineStart, end) + 1);
  }

  private static boolean isBreak(char c) {
    return c == '\n' || c == '\r';
  }
}
