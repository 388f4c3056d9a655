package wallbook.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wallbook.finding.SourcePosition;

/**
 * Changes to a text, collected against the text as it was and made all at once, so that everything
 * else stays as it is. Offsets count characters (code points), as the parser's marks do.
 */
final class TextEdits {
  private record Edit(int from, int to, int depth, String text, SourcePosition cause) {}

  private final int[] old;
  private final List<Edit> edits = new ArrayList<>();

  TextEdits(String text) {
    this.old = text.codePoints().toArray();
  }

  /** A character of the text as it was; a line feed beyond its end. */
  int at(int offset) {
    return offset < old.length ? old[offset] : '\n';
  }

  int length() {
    return old.length;
  }

  /** Puts a text in the place of a part. */
  void replace(int from, int to, String text, SourcePosition cause) {
    edits.add(new Edit(from, to, 0, text, cause));
  }

  /**
   * Puts a text in before an offset. Of several at one offset the deepest comes first, so that what
   * belongs to an inner thing stays with it.
   */
  void insert(int offset, int depth, String text, SourcePosition cause) {
    edits.add(new Edit(offset, offset, depth, text, cause));
  }

  /** How many changes there are. */
  int count() {
    return edits.size();
  }

  /** The new text, and which lines and columns in it were caused by what. */
  Made make(String file) {
    List<Edit> ordered = new ArrayList<>(edits);
    ordered.sort(
        Comparator.comparingInt(Edit::from)
            .thenComparing(Comparator.comparingInt(Edit::depth).reversed()));
    StringBuilder text = new StringBuilder();
    Map<Integer, SourcePosition> causes = new HashMap<>();
    int done = 0;
    for (Edit edit : ordered) {
      append(text, done, edit.from());
      int start = text.length();
      text.append(edit.text());
      for (int i = start; i <= text.length(); i++) {
        causes.putIfAbsent(i, edit.cause());
      }
      done = edit.to();
    }
    append(text, done, old.length);
    return new Made(text.toString(), file, causes);
  }

  private void append(StringBuilder text, int from, int to) {
    for (int i = from; i < to; i++) {
      text.appendCodePoint(old[i]);
    }
  }

  /** A new text. */
  record Made(String text, String file, Map<Integer, SourcePosition> causes) {

    /** What caused the text at a position, or the position itself if it was there before. */
    SourcePosition cause(SourcePosition position) {
      if (!position.file().equals(file)) {
        return position;
      }
      int start = 0;
      for (int line = 1; line < position.line(); line++) {
        start = text.indexOf('\n', start) + 1;
      }
      int columns = Math.min(position.column() - 1, text.codePointCount(start, text.length()));
      return causes.getOrDefault(text.offsetByCodePoints(start, columns), position);
    }
  }
}
