package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.read.RecordFolder;
import wallbook.record.Job;
import wallbook.record.Look;
import wallbook.record.Photo;
import wallbook.record.RunTest;

/**
 * What something was made from, whether it is there or not.
 *
 * @param files files whose content counts
 * @param folders folders of which it counts what files they hold
 */
record Sources(Set<Path> files, Set<Path> folders) {
  Sources {
    files = placed(files);
    folders = placed(folders);
  }

  static Sources files(Collection<Path> files) {
    return new Sources(Set.copyOf(files), Set.of());
  }

  /** The files that a job names: pictures and sweeps, beside its record. */
  static Set<Path> named(Path record, Job job) {
    RecordFolder folder = new RecordFolder(record.toAbsolutePath().getParent());
    Set<Path> named = new HashSet<>();
    Stream.of(
            job.facts().look().flatMap(Look::logo).stream(),
            job.record().photos().stream().map(Photo::file),
            job.record().tests().stream().map(RunTest::sweep).flatMap(sweep -> sweep.stream()))
        .flatMap(names -> names)
        .forEach(name -> folder.place(name).ifPresent(named::add));
    return named;
  }

  private static Set<Path> placed(Set<Path> paths) {
    Set<Path> placed = new HashSet<>();
    paths.forEach(path -> placed.add(placed(path.toAbsolutePath())));
    return Set.copyOf(placed);
  }

  /** One folder under one name, since the system speaks of it under one only. */
  private static Path placed(Path path) {
    try {
      Optional<Path> folder = Optional.ofNullable(path.getParent());
      return folder.isPresent() ? folder.get().toRealPath().resolve(path.getFileName()) : path;
    } catch (IOException e) {
      return path;
    }
  }
}
