package wallbook.compose.result;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.quantity.Quantity;

/**
 * Finds the results that stand for many like them. Results of one question have values of one kind,
 * which are comparable with each other.
 */
public final class Extremes {
  private Extremes() {}

  /** The one nearest to its limit; nothing if none has a margin. */
  public static Optional<Assessment> leastMargin(Collection<Assessment> alike) {
    return alike.stream()
        .filter(a -> a.margin().isPresent())
        .min(Comparator.comparing(a -> a.margin().orElseThrow(), Extremes::compare));
  }

  /** The one with the least value; nothing if none has a value. */
  public static Optional<Assessment> least(Collection<Assessment> alike) {
    return alike.stream().filter(a -> a.value().isPresent()).min(BY_VALUE);
  }

  /** The one with the greatest value; nothing if none has a value. */
  public static Optional<Assessment> greatest(Collection<Assessment> alike) {
    return alike.stream().filter(a -> a.value().isPresent()).max(BY_VALUE);
  }

  private static final Comparator<Assessment> BY_VALUE =
      Comparator.comparing(a -> a.value().orElseThrow(), Extremes::compare);

  @SuppressWarnings("unchecked")
  private static int compare(Quantity first, Quantity second) {
    return ((Comparable<Quantity>) first).compareTo(second);
  }
}
