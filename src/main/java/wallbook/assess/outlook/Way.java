package wallbook.assess.outlook;

import java.util.List;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.wording.Phrase;

/**
 * One way in which a house can fulfil a wish.
 *
 * @param means stable name of the means, unique within its wish
 * @param words the means in words
 * @param rank usefulness of the means, the greatest first
 * @param legs cables or conduits that it takes, at least one, from the place homewards
 * @param figures how far the way goes
 * @param atPlace whether it is at the place asked about, or at one meant for such a wish
 * @param conditions what must come true besides
 * @param notes what is to be said besides
 */
public record Way(
    String means,
    Phrase words,
    int rank,
    List<Leg> legs,
    List<Figure> figures,
    boolean atPlace,
    List<Phrase> conditions,
    List<Phrase> notes) {
  public Way {
    legs = List.copyOf(legs);
    figures = List.copyOf(figures);
    conditions = List.copyOf(conditions);
    notes = List.copyOf(notes);
    if (legs.isEmpty()) {
      throw new IllegalArgumentException(means + ": a way over nothing");
    }
  }

  /** Everything that the way rests on, in the order of its legs. */
  public List<Assessment> bases() {
    return prospects().flatMap(p -> p.bases().stream()).toList();
  }

  /** The assessment that decides. */
  public Assessment decisive() {
    return Verdicts.weakest(bases());
  }

  /** What the way comes to: the weakest of its bases, and conditional if it has conditions. */
  public Verdict verdict() {
    Verdict verdict = decisive().verdict();
    return conditions.isEmpty() ? verdict : Verdicts.weaker(verdict, Verdict.CONDITIONAL);
  }

  /** The most work that one of its legs takes. */
  public Effort effort() {
    return Effort.most(legs, Leg::effort);
  }

  /** What must be done to cables or conduits before any use, each thing once. */
  public List<Phrase> first() {
    return prospects().flatMap(p -> p.first().stream()).distinct().toList();
  }

  /** What must be added, each thing once. */
  public List<Phrase> adds() {
    return prospects().flatMap(p -> p.adds().stream()).distinct().toList();
  }

  /** Everyone who is needed. */
  public List<Worker> by() {
    return prospects().flatMap(p -> p.everyone().stream()).distinct().sorted().toList();
  }

  /** What the way is counted on for first. */
  public Prospect main() {
    return legs.get(0).prospects().get(0);
  }

  private Stream<Prospect> prospects() {
    return legs.stream().flatMap(leg -> leg.prospects().stream());
  }
}
