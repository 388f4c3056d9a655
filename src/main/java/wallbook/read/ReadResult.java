package wallbook.read;

import java.util.List;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.record.Job;

/**
 * What came of reading a record.
 *
 * @param job the job, if no finding is an error
 * @param soundPart what of the record could be understood and refers to nothing that isn't there,
 *     so that checks can go on after mistakes; the whole job if there are none, and empty if not
 *     even its general facts could be read
 * @param findings everything found, in report order
 */
public record ReadResult(Optional<Job> job, Optional<Job> soundPart, List<Finding> findings) {
  public ReadResult {
    findings = List.copyOf(findings);
  }
}
