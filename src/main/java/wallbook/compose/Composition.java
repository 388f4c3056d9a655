package wallbook.compose;

import java.util.List;
import wallbook.assess.Assessments;
import wallbook.finding.Finding;
import wallbook.record.Job;
import wallbook.wording.Wording;

/**
 * What every document is composed from: the job, what was found and computed, and the words and
 * units of its reader.
 */
public record Composition(
    Job job, List<Finding> findings, Assessments assessments, Wording wording) {
  public Composition {
    findings = List.copyOf(findings);
  }

  /** How things of this job are described to this reader. */
  public Describe describe() {
    return new Describe(job, wording);
  }
}
