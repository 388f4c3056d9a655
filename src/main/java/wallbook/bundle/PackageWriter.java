package wallbook.bundle;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.SortedSet;
import java.util.TreeSet;

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
   * Where a package was stored.
   *
   * @param folder its folder
   * @param zip the same as one file
   */
  public record Stored(Path folder, Path zip) {}

  /**
   * Stores a package.
   *
   * @param into an existing folder
   * @throws PackageWriteException if a path is no path, a file can't be made or written, or what
   *     lies at the place is not a package
   */
  public Stored write(Path into, PackageContents contents) throws PackageWriteException {
    if (!Files.isDirectory(into)) {
      throw new PackageWriteException(into, "there is no such folder");
    }
    PackagePaths.checkName(into, contents.name());
    Path folder = into.resolve(contents.name());
    Path zip = into.resolve(contents.name() + ".zip");
    PackagePaths.check(folder, contents.files());
    WriterLock lock = WriterLock.take(into, contents.name(), patience);
    try {
      new Leftovers(disk, into, contents.name()).clear();
      checkReplaceable(folder, zip);
      return store(into, contents, folder, zip);
    } finally {
      lock.release();
    }
  }

  private Stored store(Path into, PackageContents contents, Path folder, Path zip)
      throws PackageWriteException {
    Path work = makeWorkFolder(into, contents);
    try {
      Path made = work.resolve(contents.name());
      Path madeZip = work.resolve(contents.name() + ".zip");
      fill(made, madeZip, contents);
      replace(work, new Path[] {made, madeZip}, new Path[] {folder, zip});
      disk.syncFolder(into);
    } catch (PackageWriteException | RuntimeException | Error e) {
      removeAfterFailure(work, e);
      throw e;
    }
    try {
      disk.delete(work);
    } catch (IOException e) {
      throw new PackageWriteException(
          work, "the new package is in place, but this folder with the old one stayed", e);
    }
    return new Stored(folder, zip);
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

  private void fill(Path folder, Path zip, PackageContents contents) throws PackageWriteException {
    Manifest manifest = new Manifest(contents);
    SortedSet<String> paths = new TreeSet<>();
    Path current = folder;
    try {
      Files.createDirectory(folder);
      for (PackageFile file : contents.files()) {
        current = folder.resolve(file.path());
        byte[] bytes = file.content().bytes();
        Files.createDirectories(current.getParent());
        disk.write(current, bytes);
        manifest.add(file.path(), bytes);
        paths.add(file.path());
      }
      current = folder.resolve(Manifest.NAME);
      disk.write(current, manifest.toJson());
      paths.add(Manifest.NAME);
      current = zip;
      PackageZip.write(folder, paths, contents.issued(), zip);
      disk.sync(zip);
      syncFolders(folder);
    } catch (IOException e) {
      throw new PackageWriteException(current, "it can't be written: " + e.getMessage(), e);
    }
  }

  private void syncFolders(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      all.filter(Files::isDirectory).forEach(disk::syncFolder);
    }
    disk.syncFolder(folder.getParent());
  }

  /** Moves old things aside and new ones in; undoes in reverse what was done if a move fails. */
  private void replace(Path work, Path[] made, Path[] places) throws PackageWriteException {
    Deque<Path[]> undo = new ArrayDeque<>();
    Path current = places[0];
    try {
      for (int i = 0; i < places.length; i++) {
        current = places[i];
        if (Files.exists(current, LinkOption.NOFOLLOW_LINKS)) {
          Path aside = work.resolve(Leftovers.aside(i));
          disk.move(current, aside);
          undo.push(new Path[] {aside, current});
        }
      }
      for (int i = 0; i < places.length; i++) {
        current = places[i];
        disk.move(made[i], current);
        undo.push(new Path[] {current, made[i]});
      }
    } catch (IOException | RuntimeException e) {
      for (Path[] move : undo) {
        restore(move[0], move[1], e);
      }
      throw new PackageWriteException(current, "the new package can't be moved there", e);
    }
  }

  private void restore(Path from, Path to, Exception failure) throws PackageWriteException {
    try {
      disk.move(from, to);
    } catch (IOException e) {
      failure.addSuppressed(e);
      throw new PackageWriteException(
          to, "it could be neither replaced nor put back and now lies at " + from, failure);
    }
  }

  /** Leaves nothing behind, except what {@link #restore} says is the only copy. */
  private void removeAfterFailure(Path work, Throwable failure) {
    boolean holdsTheEarlierPackage =
        Files.exists(work.resolve(Leftovers.aside(0)))
            || Files.exists(work.resolve(Leftovers.aside(1)));
    if (holdsTheEarlierPackage) {
      return;
    }
    try {
      disk.delete(work);
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }
}
