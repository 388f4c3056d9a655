package wallbook.read;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.Node;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/**
 * Binds the lists of a record while the rest of its file is still being parsed, in the order of the
 * file, on one thread of its own: parsing and binding take about as long as each other. Nobody else
 * may use the binder until {@link #bind} is called.
 */
final class SectionsAhead<T extends Record> implements AutoCloseable {
  private final Binder binder;
  private final Class<T> type;
  private final Map<Field, Future<Binder.Bound>> begun = new LinkedHashMap<>();
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task, "sections");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * @param type of the whole
   */
  SectionsAhead(Binder binder, Class<T> type) {
    this.binder = binder;
    this.type = type;
  }

  /** Begins to bind a value of the whole; of two with one key the first counts. */
  void begin(String key, Node value) {
    Optional<Field> field = Shape.of(type).field(key);
    if (value instanceof CollectionNode<?> && field.isPresent()) {
      begun.computeIfAbsent(field.get(), f -> worker.submit(() -> binder.bindAlone(f, value)));
    }
  }

  /** The whole, when it is parsed. */
  Optional<T> bind(Node whole) {
    Map<Field, Binder.Bound> bound = new LinkedHashMap<>();
    begun.forEach((field, future) -> bound.put(field, result(future)));
    return binder.bind(whole, type, bound);
  }

  private static Binder.Bound result(Future<Binder.Bound> future) {
    try {
      return future.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("a section can't be bound", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a record was read", e);
    }
  }

  /** Gives up what was begun and not asked for. */
  @Override
  public void close() {
    worker.shutdownNow();
  }
}
