package wallbook.assess.copper;

import java.util.Set;
import wallbook.wording.Phrase;

/**
 * A fault of the connection pin by pin, by the name the trade gives it.
 *
 * @param where pins or pairs it was found at, for instance {@code 3} or {@code 12/36}
 * @param pairs pairs that cannot be used because of it, by their pins: {@code 12}, {@code 36},
 *     {@code 45}, {@code 78}
 */
record WireFault(Kind kind, String where, Set<String> pairs) {

  enum Kind {
    /** A pin that reaches nothing. */
    OPEN("pairs.wire.open"),
    /** Pins joined that should not be. */
    SHORT("pairs.wire.short"),
    /** The two conductors of a pair swapped. */
    REVERSED("pairs.wire.reversed"),
    /** A pair on another pair's pins; also called transposed. */
    CROSSED("pairs.wire.crossed"),
    /** Conductors of a pair on pins of two pairs, or any other wrong connection. */
    MISWIRED("pairs.wire.miswired"),
    /** Right pin to pin, but the conductors of two twisted pairs exchanged at both ends. */
    SPLIT("pairs.wire.split");

    private final String key;

    Kind(String key) {
      this.key = key;
    }
  }

  WireFault {
    pairs = Set.copyOf(pairs);
  }

  Phrase phrase() {
    return Phrase.of(kind.key, "where", where);
  }
}
