package wallbook.cli;

import java.io.PrintWriter;
import java.util.List;

/** Prints names and texts in two columns, long texts broken to the width of a terminal. */
final class Lines {
  private static final int WIDTH = 100;

  private final PrintWriter out;
  private final int indent;
  private final int column;

  /**
   * @param indent spaces before the names
   * @param column where the texts begin
   */
  Lines(PrintWriter out, int indent, int column) {
    this.out = out;
    this.indent = indent;
    this.column = column;
  }

  /** Prints a name and its text; a text without a line break of its own. */
  void print(String name, String text) {
    String head = " ".repeat(indent) + name;
    String padded = head + " ".repeat(Math.max(1, column - head.length()));
    StringBuilder line = new StringBuilder(padded);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        out.println(line);
        line = new StringBuilder(" ".repeat(column));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    out.println(line.toString().stripTrailing());
  }

  /** Prints a name with several texts, each beginning a line. */
  void print(String name, List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      print(i == 0 ? name : "", texts.get(i));
    }
  }
}
