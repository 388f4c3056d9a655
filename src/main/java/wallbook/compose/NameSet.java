package wallbook.compose;

import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Names that a text may hold: each at the beginning of a word of the text, whatever follows. A text
 * is looked through once, however many names there are.
 */
final class NameSet {
  /** None of them begins another, so that at most one begins what follows from a letter on. */
  private final NavigableSet<String> names = new TreeSet<>();

  NameSet(List<String> all) {
    for (String name : new TreeSet<>(all)) {
      // In order of the alphabet a name comes right after the shortest that begins it.
      if (names.isEmpty() || !name.startsWith(names.last())) {
        names.add(name);
      }
    }
  }

  /** Whether one of the names stands in a text. */
  boolean isNamedIn(String text) {
    int at = 0;
    int before = ' ';
    while (at < text.length()) {
      if (!isOfWord(before) && beginsWithName(text.substring(at))) {
        return true;
      }
      before = text.codePointAt(at);
      at += Character.charCount(before);
    }
    return names.contains("");
  }

  private boolean beginsWithName(String rest) {
    String name = names.floor(rest);
    return name != null && rest.startsWith(name);
  }

  private static boolean isOfWord(int codePoint) {
    int type = Character.getType(codePoint);
    return Character.isLetter(codePoint)
        || type == Character.DECIMAL_DIGIT_NUMBER
        || type == Character.LETTER_NUMBER
        || type == Character.OTHER_NUMBER;
  }
}
