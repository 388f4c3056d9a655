package wallbook.bundle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * A package on its way: files are put to the disk as they come, so that none is held in memory, and
 * the whole is moved to its place at the end. What is closed before it is stored leaves nothing
 * behind. Files may be added by several threads.
 */
public final class PackageDraft implements AutoCloseable {
  private final Disk disk;
  private final WriterLock lock;
  private final Path into;
  private final PackageContents contents;
  private final Path work;
  private final Path made;
  private final PackagePaths paths;
  private final Manifest manifest;
  private Optional<Unbroken> moving = Optional.empty();
  private boolean stored;

  /**
   * @param work a folder for this draft alone
   */
  PackageDraft(Disk disk, WriterLock lock, Path into, PackageContents contents, Path work) {
    this.disk = disk;
    this.lock = lock;
    this.into = into;
    this.contents = contents;
    this.work = work;
    this.made = work.resolve(contents.name());
    this.paths = new PackagePaths(folder(into, contents));
    this.manifest = new Manifest(contents);
  }

  /**
   * Where a package was stored.
   *
   * @param folder its folder
   * @param zip the same as one file
   */
  public record Stored(Path folder, Path zip) {}

  static Path folder(Path into, PackageContents contents) {
    return into.resolve(contents.name());
  }

  static Path zip(Path into, PackageContents contents) {
    return into.resolve(contents.name() + ".zip");
  }

  /**
   * Puts a file into the package.
   *
   * @throws PackageWriteException if its path is no path or taken, or the file can't be written
   */
  public void add(PackageFile file) throws PackageWriteException {
    paths.take(file.path());
    Path place = made.resolve(file.path());
    try {
      Files.createDirectories(place.getParent());
      disk.write(place, file.bytes());
    } catch (IOException e) {
      throw cantBeWritten(place, e);
    }
    manifest.add(file.path(), file.bytes());
  }

  /**
   * Completes the package and puts it in its place; an earlier one stays as it was if that fails.
   *
   * @throws PackageWriteException if a file can't be made, written or moved
   */
  public Stored store() throws PackageWriteException {
    Path folder = folder(into, contents);
    Path zip = zip(into, contents);
    Path madeZip = zip(work, contents);
    complete(madeZip);
    moving = Optional.of(begin());
    replace(new Path[] {made, madeZip}, new Path[] {folder, zip});
    disk.syncFolder(into);
    stored = true;
    try {
      disk.delete(work);
    } catch (IOException e) {
      throw new PackageWriteException(
          work, "the new package is in place, but this folder with the old one stayed", e);
    }
    return new Stored(folder, zip);
  }

  /** Gives up what is not stored, and lets other writers begin. */
  @Override
  public void close() throws PackageWriteException {
    try {
      if (!stored && !holdsTheEarlierPackage()) {
        disk.delete(work);
      }
    } catch (IOException e) {
      throw new PackageWriteException(work, "this folder with an unfinished package stayed", e);
    } finally {
      try {
        lock.release();
      } finally {
        moving.ifPresent(Unbroken::close);
      }
    }
  }

  /** Between the moves there is no whole package; who ends the program waits for the last. */
  private Unbroken begin() throws PackageWriteException {
    try {
      return Unbroken.begin();
    } catch (IllegalStateException e) {
      throw new PackageWriteException(folder(into, contents), "the program is being ended", e);
    }
  }

  private void complete(Path zip) throws PackageWriteException {
    Path current = made.resolve(Manifest.NAME);
    try {
      Files.createDirectories(made);
      disk.write(current, manifest.toJson());
      current = zip;
      PackageZip.write(made, manifest.paths(), contents.issued(), zip);
      disk.sync(zip);
      syncFolders(made);
    } catch (IOException e) {
      throw cantBeWritten(current, e);
    }
  }

  private static PackageWriteException cantBeWritten(Path file, IOException e) {
    return new PackageWriteException(file, "it can't be written: " + e.getMessage(), e);
  }

  private void syncFolders(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      all.filter(Files::isDirectory).forEach(disk::syncFolder);
    }
    disk.syncFolder(folder.getParent());
  }

  /** Moves old things aside and new ones in; undoes in reverse what was done if a move fails. */
  private void replace(Path[] made, Path[] places) throws PackageWriteException {
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

  /** Whether what {@link #restore} could not put back is here, and its only copy. */
  private boolean holdsTheEarlierPackage() {
    return Files.exists(work.resolve(Leftovers.aside(0)))
        || Files.exists(work.resolve(Leftovers.aside(1)));
  }
}
