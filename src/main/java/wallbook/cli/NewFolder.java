package wallbook.cli;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/** A folder that is made if need be, and taken away again if nothing comes of it. */
final class NewFolder implements AutoCloseable {
  private final Deque<Path> made;

  private NewFolder(Deque<Path> made) {
    this.made = made;
  }

  /**
   * Makes a folder and those above it that lack.
   *
   * @throws IOException if it can't be made
   */
  static NewFolder make(Path folder) throws IOException {
    Deque<Path> missing = new ArrayDeque<>();
    for (Path each = folder.toAbsolutePath().normalize();
        each != null && Files.notExists(each);
        each = each.getParent()) {
      missing.addLast(each);
    }
    Files.createDirectories(folder);
    return new NewFolder(missing);
  }

  /** Something came of it. */
  void keep() {
    made.clear();
  }

  @Override
  public void close() throws IOException {
    try {
      for (Path each : made) {
        Files.deleteIfExists(each);
      }
    } catch (DirectoryNotEmptyException e) {
      // Somebody else uses it by now.
      return;
    }
  }
}
