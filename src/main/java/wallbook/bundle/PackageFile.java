package wallbook.bundle;

import java.io.IOException;
import java.util.Objects;

/**
 * A file of a package.
 *
 * @param path place in the package, with slashes, such as {@code trades/electrical.pdf}
 * @param content what is in it, asked for once, when it is written
 */
public record PackageFile(String path, Content content) {

  /** Makes the bytes of a file when they are wanted. */
  @FunctionalInterface
  public interface Content {
    byte[] bytes() throws IOException;
  }

  public PackageFile {
    Objects.requireNonNull(path);
    Objects.requireNonNull(content);
  }

  /** A file whose bytes are there already. */
  public static PackageFile of(String path, byte[] bytes) {
    return new PackageFile(path, () -> bytes);
  }
}
