package wallbook.assess;

import java.util.Optional;
import java.util.function.Supplier;

/** What is made when it is first asked for, and then kept; whoever else asks waits. */
final class Kept<T> {
  private final Supplier<T> source;
  private Optional<T> made = Optional.empty();

  Kept(Supplier<T> source) {
    this.source = source;
  }

  synchronized T get() {
    if (made.isEmpty()) {
      made = Optional.of(source.get());
    }
    return made.get();
  }
}
