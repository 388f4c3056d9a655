package wallbook.assess.fibre;

import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.quantity.Length;
import wallbook.record.FibreClass;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/**
 * One fibre run as it is assessed.
 *
 * @param length of the cable, which is that of the link without patch cords
 * @param joints as made, or for a fibre that is not terminated as it would be once it is
 * @param unfinished what is to be said if not both ends are known to be terminated
 * @param lengthNotes how the length is known
 * @param jointNotes how the joints are known
 * @param readings losses read with light source and power meter; none counts before both ends are
 *     terminated
 */
record FibreLink(
    Run run,
    Optional<FibreClass> fibreClass,
    Optional<Integer> fibres,
    Optional<Length> length,
    Joints joints,
    Optional<Phrase> unfinished,
    List<Phrase> lengthNotes,
    List<Phrase> jointNotes,
    List<Reading> readings) {
  FibreLink {
    lengthNotes = List.copyOf(lengthNotes);
    jointNotes = List.copyOf(jointNotes);
    readings = List.copyOf(readings);
  }

  /** Whether both ends are terminated. */
  boolean terminated() {
    return unfinished.isEmpty();
  }

  /** Names what is taken for granted of the cable and its ends. */
  void assumeCable(Assessment.Builder result) {
    unfinished.ifPresent(result::onlyIf);
    lengthNotes.forEach(result::assuming);
  }

  /** Names what is taken for granted of a budget. */
  void assume(Assessment.Builder result) {
    assumeCable(result);
    jointNotes.forEach(result::assuming);
  }

  String id() {
    return run.id();
  }

  /** Why nothing can be carried whatever the link's loss; empty for a sound run. */
  Optional<Phrase> outOfUse() {
    return switch (run.condition()) {
      case DAMAGED -> Optional.of(Phrase.of("fibre.limit.damaged"));
      case ABANDONED -> Optional.of(Phrase.of("fibre.limit.abandoned"));
      case IN_SERVICE, DARK -> Optional.empty();
    };
  }
}
