package wallbook.assess.outlook;

import java.util.List;
import wallbook.assess.Assessment;
import wallbook.wording.Phrase;

/**
 * Something that a cable or conduit could carry later.
 *
 * @param subject id of the run or conduit
 * @param service stable name of the service, a row of the table {@code outlook-services}, or {@code
 *     cable.<id>} for a cable that a conduit could take
 * @param name the service in words
 * @param rank usefulness among the services of a thing, the greatest first
 * @param basis the assessment that the statement rests on: its verdict, margin and source
 * @param adds what must be added
 * @param by everyone who is needed
 * @param effort how much work it takes
 * @param occupied whether the thing is in service today, so that the new use shares or replaces it
 */
public record Prospect(
    String subject,
    String service,
    Phrase name,
    int rank,
    Assessment basis,
    List<Phrase> adds,
    List<Worker> by,
    Effort effort,
    boolean occupied) {
  public Prospect {
    adds = List.copyOf(adds);
    by = List.copyOf(by);
  }

  /** Whether the thing could carry the service, be it under conditions. */
  public boolean possible() {
    return basis.holds();
  }
}
