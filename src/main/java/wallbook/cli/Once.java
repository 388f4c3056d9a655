package wallbook.cli;

import java.util.Optional;

/** What is made when it is first asked for, and then kept; whoever else asks waits. */
final class Once<T, E extends Exception> {
  private final Source<T, E> source;
  private Optional<T> made = Optional.empty();

  /** Makes it. */
  interface Source<T, E extends Exception> {
    T get() throws E;
  }

  Once(Source<T, E> source) {
    this.source = source;
  }

  synchronized T get() throws E {
    if (made.isEmpty()) {
      made = Optional.of(source.get());
    }
    return made.get();
  }
}
