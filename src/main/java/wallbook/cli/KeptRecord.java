package wallbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import wallbook.finding.Severity;
import wallbook.read.JobReader;
import wallbook.read.ReadResult;
import wallbook.read.RecordFolder;
import wallbook.record.Job;

/**
 * The record that a file, a folder or a package holds. Sweeps are not in packages and not needed to
 * compare records, so that a missing one is no obstacle.
 */
final class KeptRecord {
  private static final String IN_PACKAGE = "data/job.yaml";
  private static final int MOST_BYTES = 32 * 1024 * 1024;

  private KeptRecord() {}

  /** The bytes of the record at a path, if there is one: a file, a folder, a package or its zip. */
  static Optional<byte[]> bytes(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      Path inPackage = path.resolve(IN_PACKAGE);
      Path inFolder = path.resolve("job.yaml");
      Path found = Files.exists(inPackage) ? inPackage : inFolder;
      return Files.exists(found) ? Optional.of(Files.readAllBytes(found)) : Optional.empty();
    } else if (path.toString().endsWith(".zip")) {
      return fromZip(path);
    }
    return Files.exists(path) ? Optional.of(Files.readAllBytes(path)) : Optional.empty();
  }

  private static Optional<byte[]> fromZip(Path path) throws IOException {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      Optional<? extends ZipEntry> entry =
          zip.stream().filter(e -> e.getName().endsWith("/" + IN_PACKAGE)).findFirst();
      if (entry.isEmpty()) {
        return Optional.empty();
      }
      try (InputStream in = zip.getInputStream(entry.get())) {
        return Optional.of(in.readNBytes(MOST_BYTES));
      }
    }
  }

  /** The job of the record, unless it has other mistakes than files that are not beside it. */
  static Optional<Job> job(Path shown, byte[] bytes, JobReader reader) {
    RecordFolder folder = new RecordFolder(shown.toAbsolutePath().getParent());
    ReadResult result = reader.read(shown.toString().replace('\\', '/'), bytes, folder);
    boolean sound =
        result.findings().stream()
            .filter(f -> f.severity() == Severity.ERROR)
            .allMatch(f -> f.name().equals("missing-file"));
    return result.soundPart().filter(job -> sound);
  }
}
