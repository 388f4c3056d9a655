package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import wallbook.read.JobReader;
import wallbook.read.RecordFolder;
import wallbook.record.Job;
import wallbook.record.JobRecord;
import wallbook.record.Look;
import wallbook.record.Photo;
import wallbook.record.RunTest;
import wallbook.reference.Tables;
import wallbook.render.CarriedRecord;

/** Stores what a document carried: the record, and beside it the sweeps that the record names. */
final class RecoveredFiles {
  private final Path into;
  private final byte[] record;
  private final Map<Path, byte[]> beside = new TreeMap<>();
  private final Set<String> missing = new LinkedHashSet<>();
  private final Optional<Job> job;

  /**
   * @param into where the record is to lie
   * @param carried what holds a record
   */
  RecoveredFiles(Path into, CarriedRecord carried) {
    this.into = into.toAbsolutePath().normalize();
    this.record = carried.bytes().orElseThrow();
    Path folder = this.into.getParent();
    this.job =
        new JobReader(new Tables())
            .read(into.toString(), record, new RecordFolder(folder))
            .soundPart();
    for (String name : job.map(j -> named(j.record())).orElse(Set.of())) {
      Optional<Path> place = inside(folder, name).filter(p -> carried.beside().containsKey(name));
      if (place.isPresent()) {
        beside.put(place.get(), carried.beside().get(name));
      } else if (new RecordFolder(folder).file(name).isEmpty()) {
        missing.add(name);
      }
    }
  }

  /** Whom the record was made for, if it is an extract. */
  Optional<String> extractFor() {
    return job.flatMap(j -> j.facts().extractFor());
  }

  /** Files that the record names and that are neither carried nor there. */
  Set<String> missing() {
    return missing;
  }

  /**
   * Stores all or nothing.
   *
   * @throws IOException if one of the files is there already, or can't be written
   */
  void write() throws IOException {
    Map<Path, byte[]> all = new TreeMap<>(beside);
    all.put(into, record);
    for (Path file : all.keySet()) {
      if (Files.exists(file)) {
        throw new IOException(file + " is there already; name another file with --into");
      }
    }
    List<Path> written = new ArrayList<>();
    boolean whole = false;
    try {
      for (Map.Entry<Path, byte[]> file : all.entrySet()) {
        Files.createDirectories(file.getKey().getParent());
        WholeFile.write(file.getKey(), file.getValue());
        written.add(file.getKey());
      }
      whole = true;
    } finally {
      if (!whole) {
        for (Path file : written) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  private static Set<String> named(JobRecord record) {
    Set<String> names = new LinkedHashSet<>();
    record.tests().stream().map(RunTest::sweep).forEach(sweep -> sweep.ifPresent(names::add));
    record.photos().stream().map(Photo::file).forEach(names::add);
    record.job().look().flatMap(Look::logo).ifPresent(names::add);
    return names;
  }

  /** A carried name leads nowhere outside the folder. */
  private static Optional<Path> inside(Path folder, String name) {
    try {
      return Optional.of(folder.resolve(name).normalize())
          .filter(path -> path.startsWith(folder) && !path.equals(folder));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
