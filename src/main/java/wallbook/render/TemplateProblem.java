package wallbook.render;

import java.util.Objects;

/**
 * A template, stylesheet or words file that can't be used as it stands. Says where and what, for a
 * reader who edits templates and doesn't know this program.
 */
public final class TemplateProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final int column;
  private final String problem;

  /**
   * @param file path below the templates folder, with slashes
   * @param line line of the file from 1, or 0 if unknown
   * @param column column from 1, or 0 if unknown
   * @param problem what is wrong or missing, a sentence
   * @param cause what was thrown, or null
   */
  public TemplateProblem(String file, int line, int column, String problem, Throwable cause) {
    super(position(file, line, column) + ": " + problem, cause);
    this.file = Objects.requireNonNull(file);
    this.line = line;
    this.column = column;
    this.problem = Objects.requireNonNull(problem);
  }

  public TemplateProblem(String file, String problem) {
    this(file, 0, 0, problem, null);
  }

  /** Path below the templates folder, with slashes. */
  public String file() {
    return file;
  }

  /** Line from 1; 0 if the whole file is meant. */
  public int line() {
    return line;
  }

  /** Column from 1; 0 if unknown. */
  public int column() {
    return column;
  }

  /** What is wrong or missing. */
  public String problem() {
    return problem;
  }

  private static String position(String file, int line, int column) {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
