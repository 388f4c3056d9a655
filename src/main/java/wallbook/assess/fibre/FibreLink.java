package wallbook.assess.fibre;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.quantity.Length;
import wallbook.record.FibreClass;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/**
 * One fibre run as it is assessed.
 *
 * @param length of the cable, which is that of the link without patch cords
 * @param joints as made, or for a fibre that is not terminated as it would be once it is
 * @param terminated whether both ends are terminated
 * @param cableNotes how length and termination are known
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
    boolean terminated,
    List<Phrase> cableNotes,
    List<Phrase> jointNotes,
    List<Reading> readings) {
  FibreLink {
    cableNotes = List.copyOf(cableNotes);
    jointNotes = List.copyOf(jointNotes);
    readings = List.copyOf(readings);
  }

  /** What is taken for granted of a budget. */
  List<Phrase> assumptions() {
    return Stream.concat(cableNotes.stream(), jointNotes.stream()).toList();
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
