package wallbook.bundle;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.SortedSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs the folder of a package: entries in order of their paths, all of one date. */
final class PackageZip {
  private PackageZip() {}

  /**
   * @param folder the folder, whose name begins every entry
   * @param paths its files
   * @param issued date of the entries, not before 1980, which a zip can't say
   * @param file the zip, not there yet
   */
  static void write(Path folder, SortedSet<String> paths, LocalDate issued, Path file)
      throws IOException {
    try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW);
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
      for (String path : paths) {
        ZipEntry entry = new ZipEntry(folder.getFileName() + "/" + path);
        entry.setTimeLocal(issued.atTime(12, 0));
        zip.putNextEntry(entry);
        Files.copy(folder.resolve(path), zip);
        zip.closeEntry();
      }
    }
  }
}
