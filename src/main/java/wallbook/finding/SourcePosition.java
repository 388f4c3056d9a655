package wallbook.finding;

/**
 * A place in a file. Lines and columns count from 1; the column counts characters, a tab as one.
 *
 * @param file path as the user gave it, with forward slashes
 */
public record SourcePosition(String file, int line, int column) {
  public SourcePosition {
    if (line < 1 || column < 1) {
      throw new IllegalArgumentException("lines and columns count from 1: " + line + ":" + column);
    }
  }

  /** The form that editors and terminals open: {@code job.yaml:12:7}. */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
