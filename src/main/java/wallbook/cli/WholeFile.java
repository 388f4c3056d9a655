package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file beside its place and moves it there, so that nobody ever sees half of it. */
final class WholeFile {
  private WholeFile() {}

  /**
   * Writes or replaces a file; a link is followed, so that what it leads to is replaced.
   *
   * @throws IOException if it can't be written; what was there stays
   */
  static void write(Path file, byte[] bytes) throws IOException {
    Path place = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path beside = Files.createTempFile(place.getParent(), "." + place.getFileName(), ".part");
    try {
      Files.write(beside, bytes);
      if (Files.exists(place) && Files.getFileStore(place).supportsFileAttributeView("posix")) {
        Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(place));
      }
      Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
