package wallbook.assess.lowvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.wire.Wire;
import wallbook.quantity.Voltage;
import wallbook.wording.Phrase;

/**
 * A run as a feed, with a number of conductors joined for each pole.
 *
 * @param variant end of its topics: empty for what the record says, {@code .doubled} for the same
 *     with twice the conductors
 * @param perPole conductors joined for each pole
 */
record SupplyPath(String variant, Wire wire, int perPole, List<Phrase> assumptions) {

  SupplyPath {
    assumptions = List.copyOf(assumptions);
  }

  /** The path as recorded. */
  static SupplyPath of(Wire wire, int perPole) {
    return new SupplyPath("", wire, perPole, wire.assumptions());
  }

  /** The same with twice the conductors, if the cable is known to have them. */
  Optional<SupplyPath> doubled() {
    if (!wire.hasFor(2 * perPole)) {
      return Optional.empty();
    }
    List<Phrase> more = new ArrayList<>(assumptions);
    more.add(Phrase.of("wire.assume.joined", "count", 2 * perPole));
    return Optional.of(new SupplyPath(".doubled", wire, 2 * perPole, more));
  }

  DcLine at(Voltage supply) {
    return new DcLine(supply, wire.loop(perPole));
  }

  /** Starts an assessment of the run with everything that was taken for granted. */
  Assessment.Builder begin(String topic, Phrase asked) {
    Assessment.Builder builder = Assessment.of(wire.run().id(), "dc." + topic + variant, asked);
    assumptions.forEach(builder::assuming);
    return builder.hangingOn(wire.conditions());
  }

  /** Within or beyond, and within only conditionally where the resistance is not firm. */
  Verdict verdict(boolean within) {
    if (!within) {
      return Verdict.BEYOND;
    }
    return wire.firm() ? Verdict.WITHIN : Verdict.CONDITIONAL;
  }
}
