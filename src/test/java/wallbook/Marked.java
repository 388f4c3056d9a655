package wallbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Text with the sign {@code ¶} where something is expected, so that a test shows the place instead
 * of counting lines and columns.
 */
public record Marked(String marked) {
  private static final String MARK = "¶";

  /** The text without the mark. */
  public String text() {
    return marked.replace(MARK, "");
  }

  /** The place of the mark as findings write it, for a file {@code job.yaml}. */
  public String position() {
    int at = marked.indexOf(MARK);
    assertTrue(at >= 0, "the text has no mark");
    int line = 1 + (int) marked.substring(0, at).chars().filter(c -> c == '\n').count();
    int lineStart = marked.lastIndexOf('\n', at - 1) + 1;
    return "job.yaml:" + line + ":" + (marked.codePointCount(lineStart, at) + 1);
  }
}
