package wallbook.cli;

import java.io.Console;
import java.util.Optional;

/** The terminal that somebody sits at, if the program was started from one. */
final class Terminal {
  private Terminal() {}

  /** Nothing if input or output goes elsewhere, such as into a file. */
  @SuppressWarnings("SystemConsoleNull") // What isTerminal is for, where there is one.
  static Optional<Console> attached() {
    return Optional.ofNullable(System.console()).filter(Terminal::isTerminal);
  }

  /** Since Java 22 there is a console without a terminal, and it tells; before, there is none. */
  private static boolean isTerminal(Console console) {
    try {
      return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}
