package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Waits until one of several files is saved. Editors that save by renaming are noticed too. */
final class RecordWatch implements AutoCloseable {
  private final WatchService service;
  private final Set<Path> files;

  /**
   * @param files files whose folders exist
   * @throws IOException if a folder can't be watched
   */
  RecordWatch(Iterable<Path> files) throws IOException {
    this.files =
        StreamSupport.stream(files.spliterator(), false)
            .map(Path::toAbsolutePath)
            .map(Path::normalize)
            .collect(Collectors.toUnmodifiableSet());
    Path any = this.files.iterator().next();
    this.service = any.getFileSystem().newWatchService();
    for (Path folder : this.files.stream().map(Path::getParent).collect(Collectors.toSet())) {
      folder.register(
          service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY);
    }
  }

  /** Returns as soon as one of the files was written. */
  void awaitSave() throws InterruptedException {
    boolean saved = false;
    while (!saved) {
      WatchKey key = service.take();
      for (WatchEvent<?> event : key.pollEvents()) {
        saved |=
            event.context() instanceof Path name
                && files.contains(((Path) key.watchable()).resolve(name).normalize());
      }
      key.reset();
    }
  }

  @Override
  public void close() throws IOException {
    service.close();
  }
}
