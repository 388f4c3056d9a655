package wallbook.assess;

import java.util.List;
import java.util.function.BiFunction;
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
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.reference.Tables;

/** Assesses a whole job, medium by medium, or one run of it. */
public final class Assessor {
  private final List<Function<Job, List<Assessment>>> media;
  private final List<BiFunction<Job, Run, List<Assessment>>> ofOneRun;

  /**
   * @param tables limits and generic data
   */
  public Assessor(Tables tables) {
    CopperAssessor copper = new CopperAssessor(tables);
    FibreAssessor fibre = new FibreAssessor(tables);
    CoaxAssessor coax = new CoaxAssessor(tables);
    SpeakerAssessor speaker = new SpeakerAssessor(tables);
    LowVoltageAssessor lowVoltage = new LowVoltageAssessor(tables);
    ConduitAssessor conduit = new ConduitAssessor(tables);
    OutdoorAssessor outdoor = new OutdoorAssessor(tables);
    LocationAssessor location = new LocationAssessor(tables);
    PracticeAssessor practice = new PracticeAssessor(tables);
    this.media =
        List.of(
            copper::assess,
            fibre::assess,
            coax::assess,
            speaker::assess,
            lowVoltage::assess,
            conduit::assess,
            outdoor::assess,
            location::assess,
            practice::assess);
    this.ofOneRun =
        List.of(
            copper::assess,
            (job, run) -> isOf(Medium.FIBRE, job, run) ? fibre.assess(job) : List.of(),
            (job, run) -> isOf(Medium.COAX, job, run) ? coax.assess(job) : List.of(),
            (job, run) -> speaker.assess(job),
            (job, run) -> lowVoltage.assess(job),
            (job, run) -> outdoor.assess(job),
            (job, run) -> location.assess(job));
  }

  private static boolean isOf(Medium medium, Job job, Run run) {
    return job.cableOf(run).medium() == medium;
  }

  /** Everything that can be said of the job, medium by medium on all processors. */
  public Assessments assess(Job job) {
    return new Assessments(
        media.parallelStream().flatMap(medium -> medium.apply(job).stream()).toList());
  }

  /**
   * Everything that can be said of one run, in the same words as if the whole job were assessed.
   */
  public Assessments assess(Job job, Run run) {
    return new Assessments(
        ofOneRun.parallelStream()
            .flatMap(medium -> medium.apply(job, run).stream())
            .filter(assessment -> assessment.subject().equals(run.id()))
            .toList());
  }
}
