package wallbook.cli;

import java.io.PrintWriter;

/**
 * Where a command prints: results to the output, everything else to the error stream, progress only
 * if somebody watches.
 */
record Console(PrintWriter out, PrintWriter err, boolean interactive) {

  /** Says what is being done; each call replaces the line of the one before. */
  void progress(String what) {
    if (interactive) {
      err.print("\r\u001b[K" + what);
      err.flush();
    }
  }

  /** Takes the line of progress away. */
  void progressDone() {
    progress("");
  }
}
