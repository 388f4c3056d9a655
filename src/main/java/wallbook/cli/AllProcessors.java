package wallbook.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import wallbook.render.TemplateProblem;

/**
 * Does the same to each of a list on all processors, begun in the order of the list: what takes
 * longest should come first, so that no processor is left with it at the end. The callers of one
 * process share their helpers: there are as many as there are processors but one.
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
   * @throws TemplateProblem if the first in the list that fails does so for that
   * @throws IOException likewise
   */
  static <A, B> List<B> each(List<A> list, Work<A, B> work) throws TemplateProblem, IOException {
    List<Outcome<B>> outcomes =
        new ArrayList<>(
            Collections.nCopies(list.size(), new Outcome<B>(Optional.empty(), Optional.empty())));
    AtomicInteger next = new AtomicInteger();
    IntStream.rangeClosed(0, ForkJoinPool.getCommonPoolParallelism())
        .parallel()
        .forEach(
            worker -> {
              for (int i = next.getAndIncrement(); i < list.size(); i = next.getAndIncrement()) {
                outcomes.set(i, tried(work, list.get(i)));
              }
            });
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

  private static void throwIt(Exception failure) throws TemplateProblem, IOException {
    if (failure instanceof TemplateProblem problem) {
      throw problem;
    } else if (failure instanceof IOException problem) {
      throw problem;
    }
    throw (RuntimeException) failure;
  }
}
