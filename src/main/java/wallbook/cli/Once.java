package wallbook.cli;

import java.util.Optional;
import wallbook.render.TemplateProblem;

/** What is made when it is first asked for, and then kept; whoever else asks waits. */
final class Once<T> {
  private final Source<T> source;
  private Optional<T> made = Optional.empty();

  /** Makes it. */
  interface Source<T> {
    T get() throws TemplateProblem;
  }

  Once(Source<T> source) {
    this.source = source;
  }

  synchronized T get() throws TemplateProblem {
    if (made.isEmpty()) {
      made = Optional.of(source.get());
    }
    return made.get();
  }
}
