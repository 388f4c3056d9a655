package wallbook.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import wallbook.render.TemplateProblem;

/**
 * Does the same to each of a list on several processors, begun in the order of the list: what takes
 * longest should come first, so that no processor is left with it at the end.
 *
 * <p>It has threads of its own. One that waits for what another one makes must not be a thread of
 * the common pool, which that other one may need for its making.
 */
final class AllProcessors {
  private AllProcessors() {}

  /** What is done to one. */
  interface Work<A, B> {
    B of(A one) throws TemplateProblem, IOException;
  }

  private record Outcome<B>(Optional<B> result, Optional<Exception> failure) {}

  /**
   * The results in the order of the list.
   *
   * @param processors how many are under way at a time, one of them by the caller itself
   * @throws TemplateProblem if the first in the list that fails does so for that
   * @throws IOException likewise
   */
  static <A, B> List<B> each(List<A> list, int processors, Work<A, B> work)
      throws TemplateProblem, IOException {
    List<Outcome<B>> outcomes =
        new ArrayList<>(
            Collections.nCopies(list.size(), new Outcome<B>(Optional.empty(), Optional.empty())));
    AtomicInteger next = new AtomicInteger();
    Runnable worker =
        () -> {
          for (int i = next.getAndIncrement(); i < list.size(); i = next.getAndIncrement()) {
            outcomes.set(i, tried(work, list.get(i)));
          }
        };
    List<FutureTask<Void>> helpers = new ArrayList<>();
    for (int i = 1; i < Math.min(processors, list.size()); i++) {
      FutureTask<Void> helper = new FutureTask<>(worker, null);
      helpers.add(helper);
      Thread thread = new Thread(helper, "processor-" + (i + 1));
      thread.setDaemon(true);
      thread.start();
    }
    worker.run();
    for (FutureTask<Void> helper : helpers) {
      await(helper);
    }
    List<B> results = new ArrayList<>();
    for (Outcome<B> outcome : outcomes) {
      if (outcome.failure().isPresent()) {
        throwIt(outcome.failure().get());
      }
      results.add(outcome.result().orElseThrow());
    }
    return results;
  }

  private static <A, B> Outcome<B> tried(Work<A, B> work, A one) {
    try {
      return new Outcome<>(Optional.of(work.of(one)), Optional.empty());
    } catch (TemplateProblem | IOException | RuntimeException e) {
      return new Outcome<>(Optional.empty(), Optional.of(e));
    }
  }

  private static void await(FutureTask<Void> helper) throws InterruptedIOException {
    try {
      helper.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while files were made");
    } catch (ExecutionException e) {
      // The machine itself fails, such as for want of memory; all else is an outcome.
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private static void throwIt(Exception failure) throws TemplateProblem, IOException {
    if (failure instanceof TemplateProblem problem) {
      throw problem;
    } else if (failure instanceof IOException problem) {
      throw problem;
    }
    throw (RuntimeException) failure;
  }
}
