package wallbook.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The password that opens the owner's security annex: the first line of a file, or what is typed at
 * the terminal. It never stands on the command line, where other users of the machine could read
 * it, and is never printed.
 */
final class AnnexPassword {
  /** In place of a file: ask at the terminal. */
  static final Path ASK = Path.of("-");

  private AnnexPassword() {}

  /**
   * Reads the password.
   *
   * @return nothing if there is none, or only blanks
   * @throws IOException if the file can't be read or there is no terminal to ask at
   */
  static Optional<String> read(Path from, String question) throws IOException {
    Optional<String> line = from.equals(ASK) ? asked(question) : firstLine(from);
    return line.map(String::strip).filter(password -> !password.isEmpty());
  }

  private static Optional<String> firstLine(Path file) throws IOException {
    return Files.readString(file).lines().findFirst();
  }

  private static Optional<String> asked(String question) throws IOException {
    Console terminal =
        Terminal.attached()
            .orElseThrow(
                () ->
                    new IOException(
                        "there is no terminal to ask for the password at; name a file"));
    return Optional.ofNullable(terminal.readPassword("%s ", question)).map(String::new);
  }
}
