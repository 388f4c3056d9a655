package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class AllProcessorsTest {
  private static final List<Integer> NUMBERS = IntStream.range(0, 50).boxed().toList();

  @Test
  void resultsComeInTheOrderOfTheList() throws Exception {
    List<Integer> doubled = AllProcessors.each(NUMBERS, 4, n -> 2 * n);
    assertEquals(NUMBERS.stream().map(n -> 2 * n).toList(), doubled);
  }

  @Test
  void theFirstFailureOfTheListIsTold() {
    IOException told =
        assertThrows(
            IOException.class,
            () ->
                AllProcessors.each(
                    NUMBERS,
                    3,
                    n -> {
                      if (n >= 20) {
                        throw new IOException("at " + n);
                      }
                      return n;
                    }));
    assertEquals("at 20", told.getMessage());
  }

  @Test
  void wantOfMemoryInAnotherThreadIsNotLost() {
    assertThrows(
        OutOfMemoryError.class,
        () ->
            AllProcessors.each(
                NUMBERS,
                4,
                n -> {
                  throw new OutOfMemoryError("none left");
                }));
  }

  /** What all wait for is made with the threads that all share; several do so at a time. */
  @Test
  @Timeout(60)
  void whoWaitsForAnotherTakesNoThreadFromIt() throws Exception {
    ExecutorService callers = Executors.newFixedThreadPool(4);
    Callable<List<Long>> caller =
        () -> {
          Once<Long, RuntimeException> sum =
              new Once<>(
                  () ->
                      NUMBERS.parallelStream()
                          .collect(Collectors.summingLong(n -> (long) Math.pow(n, 3))));
          return AllProcessors.each(NUMBERS, 2, n -> sum.get() + n);
        };
    for (int i = 0; i < 200; i++) {
      for (Future<List<Long>> one : callers.invokeAll(List.of(caller, caller, caller, caller))) {
        assertEquals(NUMBERS.size(), one.get().size());
      }
    }
    callers.shutdown();
  }
}
