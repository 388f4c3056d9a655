package wallbook.bundle;

import java.util.Objects;

/**
 * A file of a package.
 *
 * @param path place in the package, with slashes, such as {@code trades/electrical.pdf}
 * @param bytes what is in it; the array is the file's own from now on
 */
public record PackageFile(String path, byte[] bytes) {
  public PackageFile {
    Objects.requireNonNull(path);
    Objects.requireNonNull(bytes);
  }
}
