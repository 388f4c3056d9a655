package wallbook.bundle;

import java.io.IOException;
import java.nio.file.Path;

/** A package could not be stored; unless the message says otherwise, nothing was changed. */
public final class PackageWriteException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Path path;

  PackageWriteException(Path path, String problem, Throwable cause) {
    super(path + ": " + problem, cause);
    this.path = path;
  }

  PackageWriteException(Path path, String problem) {
    this(path, problem, null);
  }

  /** The file or folder that is the trouble. */
  public Path path() {
    return path;
  }
}
