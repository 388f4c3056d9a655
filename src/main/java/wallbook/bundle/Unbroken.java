package wallbook.bundle;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Work that a program finishes before it ends when it is told to, as by Ctrl-C. Only what takes
 * moments may be such work.
 */
final class Unbroken implements AutoCloseable {
  /** Who wants the program to end won't wait for a disk that never answers. */
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread end = new Thread(this::await, "end of unbroken work");

  private Unbroken() {}

  /**
   * The work begins; it ends by closing what is returned.
   *
   * @throws IllegalStateException if the program is ending already
   */
  static Unbroken begin() {
    Unbroken work = new Unbroken();
    Runtime.getRuntime().addShutdownHook(work.end);
    return work;
  }

  private void await() {
    try {
      done.await(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    done.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(end);
    } catch (IllegalStateException e) {
      // The program is ending, and waited for this.
      return;
    }
  }
}
