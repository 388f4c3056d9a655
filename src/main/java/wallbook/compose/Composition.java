package wallbook.compose;

import java.util.List;
import wallbook.assess.Assessments;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.WishAnswer;
import wallbook.finding.Finding;
import wallbook.record.Job;
import wallbook.wording.Wording;

/**
 * What every document is composed from: the job, what was found and computed, and the words and
 * units of its reader.
 *
 * @param outlook what cables and conduits could carry later
 * @param wishes what the house offers for each wish
 */
public record Composition(
    Job job,
    List<Finding> findings,
    Assessments assessments,
    Outlook outlook,
    List<WishAnswer> wishes,
    Wording wording) {
  public Composition {
    findings = List.copyOf(findings);
    wishes = List.copyOf(wishes);
  }

  /** What everything but the upgrade guide is composed from. */
  public Composition(Job job, List<Finding> findings, Assessments assessments, Wording wording) {
    this(job, findings, assessments, Outlook.EMPTY, List.of(), wording);
  }

  /** How things of this job are described to this reader. */
  public Describe describe() {
    return new Describe(job, wording);
  }
}
