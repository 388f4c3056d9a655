package wallbook.bundle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Work folders of writers that were killed. Only who holds the {@link WriterLock} of the package
 * may touch them: then no living writer owns one.
 */
final class Leftovers {
  private final Disk disk;
  private final Path into;
  private final String name;

  Leftovers(Disk disk, Path into, String name) {
    this.disk = disk;
    this.into = into;
    this.name = name;
  }

  /** How the names of a package's work folders begin; no id of a job holds a tilde. */
  static String prefix(String name) {
    return "." + name + "~";
  }

  /** Name in a work folder of the earlier folder (0) or zip (1), moved aside. */
  static String aside(int which) {
    return "old-" + which;
  }

  /** Finishes or undoes a replacement that was cut off, then deletes the work folders. */
  void clear() throws PackageWriteException {
    for (Path work : workFolders()) {
      try {
        settle(work);
        disk.syncFolder(into);
        disk.delete(work);
      } catch (IOException e) {
        throw new PackageWriteException(
            work, "this folder of a build that was stopped can't be cleared away", e);
      }
    }
  }

  private void settle(Path work) throws IOException {
    Path folder = into.resolve(name);
    Path zip = into.resolve(name + ".zip");
    Path newZip = work.resolve(name + ".zip");
    boolean newFolderIsIn = Files.exists(newZip) && !Files.exists(work.resolve(name));
    if (newFolderIsIn) {
      putBack(newZip, zip);
    } else {
      putBack(work.resolve(aside(0)), folder);
      putBack(work.resolve(aside(1)), zip);
    }
  }

  private void putBack(Path aside, Path place) throws IOException {
    if (Files.exists(aside, LinkOption.NOFOLLOW_LINKS)
        && !Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      disk.move(aside, place);
    }
  }

  private List<Path> workFolders() throws PackageWriteException {
    Pattern form = Pattern.compile(Pattern.quote(prefix(name)) + "[0-9]+");
    try (Stream<Path> all = Files.list(into)) {
      return all.filter(path -> form.matcher(path.getFileName().toString()).matches())
          .filter(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new PackageWriteException(into, "the folder can't be read", e);
    }
  }
}
