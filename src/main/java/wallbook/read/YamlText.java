package wallbook.read;

import java.util.regex.Pattern;

/** Texts as YAML scalars on one line. */
final class YamlText {
  /** What can stand without quotes in block and flow style alike and is read as the same text. */
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{Nd}(/.+°½¼¾][\\p{L}\\p{Nd} ()/.+²°½¼¾ΩµØ;=%<>_*-]*(?<! )");

  private static final Pattern NULL_OR_EMPTY = Pattern.compile("(?i)null|~|");

  private YamlText() {}

  /** The text without quotes where that is safe, else in double quotes with escapes. */
  static String plainOrQuoted(String text) {
    if (PLAIN.matcher(text).matches() && !NULL_OR_EMPTY.matcher(text).matches()) {
      return text;
    }
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default -> {
                  if (c < 0x20
                      || (c >= 0x7f && c < 0xa0)
                      || c == 0x2028
                      || c == 0x2029
                      || c == 0xfeff) {
                    quoted.append(String.format("\\u%04x", c));
                  } else if (c > 0xffff) {
                    quoted.append(String.format("\\U%08x", c));
                  } else {
                    quoted.appendCodePoint(c);
                  }
                }
              }
            });
    return quoted.append('"').toString();
  }
}
