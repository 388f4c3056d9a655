package wallbook.assess;

import java.util.List;
import java.util.stream.Stream;
import wallbook.assess.fibre.FibreAssessor;
import wallbook.record.Job;
import wallbook.reference.Tables;

/** Assesses a whole job, medium by medium. */
public final class Assessor {
  private final FibreAssessor fibre;

  /**
   * @param tables limits and generic data
   */
  public Assessor(Tables tables) {
    this.fibre = new FibreAssessor(tables);
  }

  /** Everything that can be said of the job. */
  public Assessments assess(Job job) {
    return new Assessments(Stream.of(fibre.assess(job)).flatMap(List::stream).toList());
  }
}
