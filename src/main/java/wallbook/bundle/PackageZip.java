package wallbook.bundle;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.SortedSet;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Packs the folder of a package: entries in order of their paths, all of one date. They are stored
 * and not compressed: what is large in a package is compressed already, and each Java compresses in
 * its own way, so that the same package would not be the same bytes.
 */
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
        byte[] bytes = Files.readAllBytes(folder.resolve(path));
        CRC32 checksum = new CRC32();
        checksum.update(bytes);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(bytes.length);
        entry.setCrc(checksum.getValue());
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
      }
    }
  }
}
