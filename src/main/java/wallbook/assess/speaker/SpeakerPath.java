package wallbook.assess.speaker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.wire.Wire;
import wallbook.quantity.Resistance;
import wallbook.record.Zone;
import wallbook.wording.Phrase;

/**
 * The way from an amplifier to a load over one run: what the record says of it, or supposes.
 *
 * @param variant end of its topics: empty for what the record says, else a dot and a name
 * @param wire conductors of the run
 * @param perPole conductors joined for each pole
 * @param taken conductors of the cable that all lines over the run take together
 * @param load lowest nominal load, if the record has what it takes
 * @param loadSaid the load in words
 * @param rest loop of other runs on the way, 0 Ω if there is none
 * @param zone that the load belongs to, if any
 * @param conditions those assumptions of the way that an answer hangs on, besides the wire's own
 */
record SpeakerPath(
    String variant,
    Wire wire,
    int perPole,
    int taken,
    Optional<Resistance> load,
    Phrase loadSaid,
    Resistance rest,
    Optional<Zone> zone,
    List<Phrase> assumptions,
    List<Phrase> conditions,
    List<Phrase> missing) {

  SpeakerPath {
    assumptions = List.copyOf(assumptions);
    conditions = List.copyOf(conditions);
    missing = List.copyOf(missing);
  }

  /** Everything the record lacks for an answer; empty if there is one. */
  List<Phrase> allMissing() {
    List<Phrase> all = new ArrayList<>(wire.missing());
    all.addAll(missing);
    return all;
  }

  /**
   * The line that the way makes.
   *
   * @throws java.util.NoSuchElementException if {@link #allMissing} is not empty
   */
  SpeakerLine line() {
    return new SpeakerLine(load.orElseThrow(), wire.loop(perPole).plus(rest));
  }

  /** The same way with twice the conductors for each pole, if the cable is known to have them. */
  Optional<SpeakerPath> doubled() {
    int withThese = taken + 2 * perPole;
    if (wire.conductors().filter(there -> there >= withThese).isEmpty()) {
      return Optional.empty();
    }
    List<Phrase> more = new ArrayList<>(assumptions);
    more.add(Phrase.of("wire.assume.joined", "count", 2 * perPole));
    return Optional.of(
        new SpeakerPath(
            variant + ".doubled",
            wire,
            2 * perPole,
            withThese,
            load,
            loadSaid,
            rest,
            zone,
            more,
            conditions,
            missing));
  }

  /**
   * The same way from another of its runs: what was the rest is now the wire, and so round. Its
   * other conductors are taken to serve other speakers.
   */
  SpeakerPath seenFrom(Wire other, Resistance restThen) {
    return new SpeakerPath(
        variant,
        other,
        1,
        other.conductors().orElse(2),
        load,
        loadSaid,
        restThen,
        zone,
        assumptions,
        conditions,
        missing);
  }

  /** Whether an answer hangs on nothing. */
  boolean firm() {
    return wire.firm() && conditions.isEmpty();
  }

  String subject() {
    return wire.run().id();
  }
}
