package wallbook.bundle;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;

/**
 * Stores packages: the folder {@code <job>-r<revision>} with a manifest, and beside it a zip of the
 * same.
 *
 * <p>Everything is written to a hidden folder beside the final place and moved there whole. An
 * earlier package of the same name is replaced; if anything fails it stays as it was and nothing
 * else is left behind. A folder or zip of that name that is not a package is never touched.
 *
 * <p>One writer at a time stores a package; a second is refused while the first is at work. What a
 * writer left that was killed, the next one clears away; if it was killed between moving the
 * earlier package aside and the new one in, the earlier one is first put back.
 */
public final class PackageWriter {
  private final Disk disk;
  private final Duration patience;

  public PackageWriter() {
    this(new Disk());
  }

  PackageWriter(Disk disk) {
    this(disk, Duration.ZERO);
  }

  private PackageWriter(Disk disk, Duration patience) {
    this.disk = disk;
    this.patience = patience;
  }

  /**
   * A writer that waits for another writer of the same package.
   *
   * @param patience how long; then the package is refused
   */
  public static PackageWriter waiting(Duration patience) {
    return new PackageWriter(new Disk(), patience);
  }

  /**
   * Begins a package, which nobody sees before it is stored. Close what is returned.
   *
   * @param into an existing folder
   * @throws PackageWriteException if the name is no name, nothing can be written there, what lies
   *     at the place is not a package, or another writer is at work on it
   */
  public PackageDraft begin(Path into, PackageContents contents) throws PackageWriteException {
    if (!Files.isDirectory(into)) {
      throw new PackageWriteException(into, "there is no such folder");
    }
    PackagePaths.checkName(into, contents.name());
    WriterLock lock = WriterLock.take(into, contents.name(), patience);
    try {
      new Leftovers(disk, into, contents.name()).clear();
      checkReplaceable(PackageDraft.folder(into, contents), PackageDraft.zip(into, contents));
      return new PackageDraft(disk, lock, into, contents, makeWorkFolder(into, contents));
    } catch (PackageWriteException | RuntimeException | Error e) {
      lock.release();
      throw e;
    }
  }

  private static void checkReplaceable(Path folder, Path zip) throws PackageWriteException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS) && !isPackage(folder)) {
      throw new PackageWriteException(folder, "it is there already and is not a package");
    }
    if (Files.exists(zip, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(zip, LinkOption.NOFOLLOW_LINKS)) {
      throw new PackageWriteException(zip, "it is there already and is not a file");
    }
  }

  private static boolean isPackage(Path folder) throws PackageWriteException {
    Path manifest = folder.resolve(Manifest.NAME);
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) || !Files.isRegularFile(manifest)) {
      return false;
    }
    try {
      return Files.readString(manifest, StandardCharsets.UTF_8)
          .contains("\"" + Manifest.FORMAT + "\"");
    } catch (IOException e) {
      throw new PackageWriteException(manifest, "the earlier manifest can't be read", e);
    }
  }

  private static Path makeWorkFolder(Path into, PackageContents contents)
      throws PackageWriteException {
    try {
      return Files.createTempDirectory(into, Leftovers.prefix(contents.name()));
    } catch (IOException e) {
      throw new PackageWriteException(into, "nothing can be written there", e);
    }
  }
}
