package wallbook.compose.guide;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallbook.quantity.Quantity;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Prints the quantities of like things together: one figure, or from the least to the greatest. */
final class Amounts {
  /** Stands where there is no figure. */
  static final String NONE = "—";

  private final Wording wording;

  Amounts(Wording wording) {
    this.wording = wording;
  }

  /** A range, or one figure if both ends print alike. */
  String range(List<Optional<Quantity>> amounts) {
    return range(amounts, wording::print);
  }

  /** The same, each end printed in a way of its own. */
  String range(List<Optional<Quantity>> amounts, Function<Quantity, String> print) {
    List<Quantity> known =
        amounts.stream().flatMap(Optional::stream).sorted(Amounts::compare).toList();
    if (known.isEmpty()) {
      return NONE;
    }
    String least = print.apply(known.get(0));
    String greatest = print.apply(known.get(known.size() - 1));
    return least.equals(greatest)
        ? least
        : wording.say(Phrase.of("guide.range", "least", least, "greatest", greatest));
  }

  /** Order of two quantities of one kind. */
  @SuppressWarnings("unchecked") // every quantity compares with its own kind, and only that comes
  static int compare(Quantity a, Quantity b) {
    return ((Comparable<Quantity>) a).compareTo(b);
  }
}
