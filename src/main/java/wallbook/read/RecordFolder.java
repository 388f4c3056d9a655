package wallbook.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The folder that a record lies in, and the files beside it that the record may name. A name leads
 * nowhere outside the folder, neither by {@code ..} nor by an absolute path nor through a link.
 */
public final class RecordFolder {
  private final Path folder;

  public RecordFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * The file of the given name, written with forward slashes, if it is a regular file inside the
   * folder.
   */
  public Optional<Path> file(String name) {
    try {
      Optional<Path> place = place(name).filter(Files::isRegularFile);
      if (place.isEmpty()) {
        return Optional.empty();
      }
      Path root = folder.toRealPath();
      return Optional.of(place.get().toRealPath()).filter(p -> p.startsWith(root));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Where the file of the given name would lie inside the folder, whether it is there or not. */
  public Optional<Path> place(String name) {
    try {
      Path root = folder.toRealPath();
      return Optional.of(root.resolve(name).normalize()).filter(p -> p.startsWith(root));
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }
}
