package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a file is like, as far as that can be told without reading it: two states that are equal are
 * of the same content.
 *
 * @param saved when it was saved last; empty if there is no such file
 * @param key tells the file from another one that took its name, where the system does
 * @param names of a folder, what files it holds
 */
record FileState(
    Optional<FileTime> saved,
    long bytes,
    Optional<Object> key,
    boolean readable,
    List<String> names) {
  private static final FileState MISSING =
      new FileState(Optional.empty(), 0, Optional.empty(), false, List.of());

  /** A state that no file is in. */
  static final FileState UNKNOWN =
      new FileState(Optional.empty(), -1, Optional.empty(), false, List.of());

  static FileState ofFile(Path file) {
    try {
      BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
      return is.isRegularFile()
          ? new FileState(
              Optional.of(is.lastModifiedTime()),
              is.size(),
              Optional.ofNullable(is.fileKey()),
              Files.isReadable(file),
              List.of())
          : MISSING;
    } catch (IOException e) {
      return MISSING;
    }
  }

  /** Files that an editor keeps for itself while it is at work don't count. */
  static FileState ofFolder(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> !name.startsWith(".") && !name.endsWith("~"))
              .sorted()
              .toList();
      return new FileState(Optional.empty(), 0, Optional.empty(), true, names);
    } catch (IOException e) {
      return MISSING;
    }
  }
}
