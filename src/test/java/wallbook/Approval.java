package wallbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares text with an approved file under {@code src/test/resources/approved}. With {@code
 * -Dapprove=true} the file is rewritten instead; the difference is then read before it is
 * committed.
 */
public final class Approval {
  private static final Path FOLDER = Path.of("src/test/resources/approved");

  private Approval() {}

  /**
   * @param name path below the folder, with slashes and its ending
   */
  public static void verify(String name, String text) {
    compare(FOLDER.resolve(name), text);
  }

  /**
   * The same for a page that is published with the program.
   *
   * @param name path below {@code docs}
   */
  public static void verifyPage(String name, String text) {
    compare(Path.of("docs").resolve(name), text);
  }

  private static void compare(Path file, String text) {
    String normalised = text.replace("\r\n", "\n").stripTrailing() + "\n";
    try {
      if (Boolean.getBoolean("approve")) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, normalised, StandardCharsets.UTF_8);
        return;
      }
      String approved = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
      assertEquals(
          approved, normalised, () -> file + " differs; if the new text is right: -Dapprove=true");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
