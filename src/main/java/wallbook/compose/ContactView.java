package wallbook.compose;

import java.util.List;
import java.util.function.Predicate;
import wallbook.record.Job;
import wallbook.record.Party;
import wallbook.wording.Wording;

/**
 * Somebody to call.
 *
 * @param phone a dash where none is recorded
 * @param licence a dash where none is recorded
 */
public record ContactView(String role, String name, String phone, String licence, String note) {
  private static final String NONE = "—";

  /** The parties of a job that are asked for, in the order of the record. */
  public static List<ContactView> of(Job job, Wording wording, Predicate<Party> which) {
    Describe describe = new Describe(job, wording);
    return job.facts().parties().stream()
        .filter(which)
        .map(
            party ->
                new ContactView(
                    describe.word(party.role()),
                    party.name(),
                    party.phone().orElse(NONE),
                    party.licence().orElse(NONE),
                    party.note().orElse("")))
        .toList();
  }
}
