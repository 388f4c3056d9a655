package wallbook.assess;

import java.util.List;
import java.util.function.Function;
import wallbook.assess.coax.CoaxAssessor;
import wallbook.assess.conduit.ConduitAssessor;
import wallbook.assess.copper.CopperAssessor;
import wallbook.assess.fibre.FibreAssessor;
import wallbook.assess.location.LocationAssessor;
import wallbook.assess.lowvoltage.LowVoltageAssessor;
import wallbook.assess.outdoor.OutdoorAssessor;
import wallbook.assess.practice.PracticeAssessor;
import wallbook.assess.speaker.SpeakerAssessor;
import wallbook.record.Job;
import wallbook.reference.Tables;

/** Assesses a whole job, medium by medium. */
public final class Assessor {
  private final List<Function<Job, List<Assessment>>> media;

  /**
   * @param tables limits and generic data
   */
  public Assessor(Tables tables) {
    this.media =
        List.of(
            new CopperAssessor(tables)::assess,
            new FibreAssessor(tables)::assess,
            new CoaxAssessor(tables)::assess,
            new SpeakerAssessor(tables)::assess,
            new LowVoltageAssessor(tables)::assess,
            new ConduitAssessor(tables)::assess,
            new OutdoorAssessor(tables)::assess,
            new LocationAssessor(tables)::assess,
            new PracticeAssessor(tables)::assess);
  }

  /** Everything that can be said of the job, medium by medium on all processors. */
  public Assessments assess(Job job) {
    return new Assessments(
        media.parallelStream().flatMap(medium -> medium.apply(job).stream()).toList());
  }
}
