package wallbook.cli;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Waits until something is saved that something else was made from: written, put in the place of
 * another file, come into being or gone.
 *
 * <p>The system's word only wakes it; what counts is whether a file is another one than it was. So
 * what else happens in the same folders is no matter, and nothing is missed that was saved while
 * nobody waited. Where the system says nothing, as of files on other machines, it looks by itself.
 */
final class SourceWatch implements AutoCloseable {
  /** Several saves with less than this between them are one. */
  private static final Duration QUIET = Duration.ofMillis(150);

  /** How often it looks by itself. */
  private static final Duration LOOK = Duration.ofSeconds(1);

  private final WatchService service;
  private final Map<Path, WatchKey> folders = new HashMap<>();
  private Sources sources;
  private Map<Path, FileState> used = new HashMap<>();
  private Instant since;
  private Set<Path> onTheWay = Set.of();

  /**
   * @param sources what is about to be used
   * @throws IOException if the system can't watch
   */
  SourceWatch(Sources sources) throws IOException {
    this.service = FileSystems.getDefault().newWatchService();
    this.sources = sources;
    this.since = Instant.now();
    this.used = look();
    register();
  }

  /**
   * Says what is watched from now on. What is new there was used after the last save that was
   * awaited, and counts as saved if it was saved later than that.
   */
  void follow(Sources now) {
    sources = now;
    Map<Path, FileState> known = used;
    used = look();
    used.replaceAll(
        (path, state) ->
            known.containsKey(path) ? known.get(path) : isLater(state) ? FileState.UNKNOWN : state);
    register();
  }

  private boolean isLater(FileState state) {
    return state.saved().map(FileTime::toInstant).filter(since::isBefore).isPresent();
  }

  /** Whether something was saved since it was used. */
  boolean isSaved() {
    return !look().equals(used);
  }

  /**
   * Returns when something was saved since it was used, and saving has come to an end. What there
   * is then is about to be used.
   */
  void awaitSave() throws InterruptedException {
    Map<Path, FileState> last = used;
    long lastSave = System.nanoTime();
    while (true) {
      Instant looked = Instant.now();
      Map<Path, FileState> seen = look();
      boolean saved = !seen.equals(used);
      if (!seen.equals(last)) {
        last = seen;
        lastSave = System.nanoTime();
      } else if (saved && System.nanoTime() - lastSave >= QUIET.toNanos()) {
        used = seen;
        since = looked;
        return;
      }
      await(saved ? QUIET : LOOK);
    }
  }

  private Map<Path, FileState> look() {
    Map<Path, FileState> states = new HashMap<>();
    sources.files().forEach(file -> states.put(file, FileState.ofFile(file)));
    sources.folders().forEach(folder -> states.put(folder, FileState.ofFolder(folder)));
    return states;
  }

  /** Waits for the system's word, at most for a time. */
  private void await(Duration most) throws InterruptedException {
    long end = System.nanoTime() + most.toNanos();
    boolean concerned = false;
    while (!concerned) {
      WatchKey key = service.poll(end - System.nanoTime(), TimeUnit.NANOSECONDS);
      if (key == null) {
        return;
      }
      for (WatchEvent<?> event : key.pollEvents()) {
        concerned |= concerns(event, (Path) key.watchable());
      }
      key.reset();
    }
    register();
  }

  /** Whether something happened to what is watched, or to a folder on the way to it. */
  private boolean concerns(WatchEvent<?> event, Path folder) {
    return !(event.context() instanceof Path name)
        || onTheWay.contains(folder.resolve(name))
        || sources.folders().contains(folder);
  }

  /** Has the system watch the folders of all sources, or what there is on the way to them. */
  private void register() {
    onTheWay = new HashSet<>();
    Set<Path> needed = new HashSet<>(sources.folders());
    for (Path source : used.keySet()) {
      Optional.ofNullable(source.getParent()).ifPresent(needed::add);
    }
    Set<Path> there = new HashSet<>();
    for (Path folder : needed) {
      Path each = folder;
      while (!Files.isDirectory(each) && each.getParent() != null) {
        onTheWay.add(each);
        each = each.getParent();
      }
      there.add(each);
    }
    onTheWay.addAll(used.keySet());
    folders.entrySet().removeIf(known -> isNeedless(known.getKey(), known.getValue(), there));
    for (Path folder : there) {
      if (!folders.containsKey(folder)) {
        watch(folder);
      }
    }
  }

  private static boolean isNeedless(Path folder, WatchKey key, Set<Path> needed) {
    if (!needed.contains(folder)) {
      key.cancel();
    }
    return !key.isValid();
  }

  private void watch(Path folder) {
    try {
      folders.put(
          folder,
          folder.register(
              service,
              StandardWatchEventKinds.ENTRY_CREATE,
              StandardWatchEventKinds.ENTRY_MODIFY,
              StandardWatchEventKinds.ENTRY_DELETE));
    } catch (IOException e) {
      // It is gone by now, or the system watches no more of them; then looking must do.
      return;
    }
  }

  @Override
  public void close() throws IOException {
    service.close();
  }
}
