package wallbook.assess.wire;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.record.Run;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * The conductors of a run as far as the record tells.
 *
 * @param length of the run, one way, above zero
 * @param pairLoop resistance there and back of one pair of conductors at the temperature
 * @param conductors how many the cable has
 * @param temperature that the resistances are reckoned at
 * @param assumptions what was taken for granted
 * @param conditions those assumptions that the resistance hangs on: an estimated length, a test
 *     that failed
 * @param missing what the record would have to say for a loop resistance; empty if there is one
 * @param source of the resistance
 */
public record Wire(
    Run run,
    Optional<Length> length,
    Optional<Resistance> pairLoop,
    Optional<Integer> conductors,
    Temperature temperature,
    List<Phrase> assumptions,
    List<Phrase> conditions,
    List<Phrase> missing,
    Source source) {

  public Wire {
    assumptions = List.copyOf(assumptions);
    conditions = List.copyOf(conditions);
    missing = List.copyOf(missing);
    if (pairLoop.isPresent() != missing.isEmpty()) {
      throw new IllegalArgumentException("a loop, or what is missing for it: " + run.id());
    }
  }

  /** Whether the resistance hangs on nothing. */
  public boolean firm() {
    return conditions.isEmpty();
  }

  /**
   * Loop resistance with conductors joined for each pole.
   *
   * @param perPole conductors joined for each pole, one or more
   * @throws java.util.NoSuchElementException if the record does not tell; see {@link #missing}
   */
  public Resistance loop(int perPole) {
    return pairLoop.orElseThrow().times(1.0 / perPole);
  }

  /**
   * Resistance per length of each pole, with conductors joined; what a longer or shorter run of the
   * same cable would have. Empty if the record has no length or no loop.
   *
   * @param perPole conductors joined for each pole, one or more
   */
  public Optional<LinearResistance> ofPole(int perPole) {
    return length
        .filter(l -> pairLoop.isPresent())
        .map(l -> LinearResistance.ohmsPerMetre(loop(perPole).inOhms() / 2 / l.inMetres()));
  }

  /** Whether the cable is known to have the conductors for two poles of so many each. */
  public boolean hasFor(int perPole) {
    return conductors.isPresent() && conductors.get() >= 2 * perPole;
  }
}
