package wallbook.assess.outlook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.wording.Phrase;

/**
 * Something that a cable or conduit could carry later, or cannot.
 *
 * @param subject id of the run or conduit
 * @param service stable name of the service, a row of the table {@code outlook-services}, or {@code
 *     cable.<id>} for a cable that a conduit could take
 * @param name the service in words
 * @param rank usefulness among the services of a thing, the greatest first
 * @param bases the assessments that the statement rests on, at least one
 * @param first what must be done to the thing before any use, such as finishing its ends
 * @param adds what this service needs besides
 * @param firstBy who does what must be done first
 * @param by who may add what the service needs
 * @param effort how much work it takes
 * @param occupied whether the thing is in service today, so that the new use shares or replaces it
 */
public record Prospect(
    String subject,
    String service,
    ServiceFamily family,
    Phrase name,
    int rank,
    List<Assessment> bases,
    List<Phrase> first,
    List<Phrase> adds,
    List<Worker> firstBy,
    Worker by,
    Effort effort,
    boolean occupied) {
  public Prospect {
    bases = List.copyOf(bases);
    first = List.copyOf(first);
    adds = List.copyOf(adds);
    firstBy = List.copyOf(firstBy);
    if (bases.isEmpty()) {
      throw new IllegalArgumentException(service + ": a statement that rests on nothing");
    }
  }

  /** The assessment that decides: the one on which least may be claimed. */
  public Assessment decisive() {
    return Verdicts.weakest(bases);
  }

  /** Everyone who is needed, each once. */
  public List<Worker> everyone() {
    return Stream.concat(firstBy.stream(), Stream.of(by)).distinct().sorted().toList();
  }

  /** What the statement comes to: the weakest verdict of its bases. */
  public Verdict verdict() {
    return decisive().verdict();
  }

  /** Whether the thing could carry the service, be it under conditions. */
  public boolean possible() {
    return bases.stream().allMatch(Assessment::holds);
  }

  /**
   * Whether the figures are known and no limit is published, so that the data sheet of the
   * equipment decides.
   */
  public boolean equipmentDecides() {
    return verdict() == Verdict.INFORMATION;
  }

  /** What stands in the way, if something does: what limits it, or what the record lacks. */
  public Optional<Phrase> blocker() {
    return switch (verdict()) {
      case BEYOND -> decisive().limitedBy();
      case NOT_STATED -> decisive().missing().stream().findFirst();
      case WITHIN, CONDITIONAL, INFORMATION -> Optional.empty();
    };
  }
}
