package wallbook.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import wallbook.assess.coax.CoaxAssessor;
import wallbook.assess.conduit.ConduitAssessor;
import wallbook.assess.copper.CopperAssessor;
import wallbook.assess.fibre.FibreAssessor;
import wallbook.assess.location.LocationAssessor;
import wallbook.assess.lowvoltage.LowVoltageAssessor;
import wallbook.assess.outdoor.OutdoorAssessor;
import wallbook.assess.practice.PracticeAssessor;
import wallbook.assess.speaker.SpeakerAssessor;
import wallbook.assess.wire.WireUse;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.reference.Tables;

/**
 * Assesses a whole job, medium by medium, or one run of it. What a medium takes is made when it is
 * first asked for: an answer about one run takes the tables of its own medium only.
 */
public final class Assessor {
  private final Kept<CopperAssessor> copper;
  private final Kept<FibreAssessor> fibre;
  private final Kept<CoaxAssessor> coax;
  private final Kept<SpeakerAssessor> speaker;
  private final Kept<LowVoltageAssessor> lowVoltage;
  private final Kept<ConduitAssessor> conduit;
  private final Kept<OutdoorAssessor> outdoor;
  private final Kept<LocationAssessor> location;
  private final Kept<PracticeAssessor> practice;

  /**
   * @param tables limits and generic data
   */
  public Assessor(Tables tables) {
    copper = new Kept<>(() -> new CopperAssessor(tables));
    fibre = new Kept<>(() -> new FibreAssessor(tables));
    coax = new Kept<>(() -> new CoaxAssessor(tables));
    speaker = new Kept<>(() -> new SpeakerAssessor(tables));
    lowVoltage = new Kept<>(() -> new LowVoltageAssessor(tables));
    conduit = new Kept<>(() -> new ConduitAssessor(tables));
    outdoor = new Kept<>(() -> new OutdoorAssessor(tables));
    location = new Kept<>(() -> new LocationAssessor(tables));
    practice = new Kept<>(() -> new PracticeAssessor(tables));
  }

  /** Everything that can be said of the job, medium by medium on all processors. */
  public Assessments assess(Job job) {
    return all(
        List.of(
            () -> copper.get().assess(job),
            () -> fibre.get().assess(job),
            () -> coax.get().assess(job),
            () -> speaker.get().assess(job),
            () -> lowVoltage.get().assess(job),
            () -> conduit.get().assess(job),
            () -> outdoor.get().assess(job),
            () -> location.get().assess(job),
            () -> practice.get().assess(job)));
  }

  /**
   * Everything that can be said of one run, in the same words as if the whole job were assessed.
   */
  public Assessments assess(Job job, Run run) {
    Medium medium = job.cableOf(run).medium();
    List<Supplier<List<Assessment>>> asked = new ArrayList<>();
    if (medium == Medium.BALANCED_PAIR) {
      asked.add(() -> copper.get().assess(job, run));
    } else if (medium == Medium.FIBRE) {
      asked.add(() -> ofRun(run, fibre.get().assess(job)));
    } else if (medium == Medium.COAX) {
      asked.add(() -> ofRun(run, coax.get().assess(job)));
    }
    if (medium == Medium.SPEAKER || job.isOfZone(run)) {
      asked.add(() -> ofRun(run, speaker.get().assess(job)));
    }
    if (WireUse.forSupply(job, run)) {
      asked.add(() -> lowVoltage.get().assess(job, run));
    }
    asked.add(() -> outdoor.get().assess(job, run));
    asked.add(() -> location.get().assess(job, run));
    return all(asked);
  }

  private static List<Assessment> ofRun(Run run, List<Assessment> assessments) {
    return assessments.stream().filter(a -> a.subject().equals(run.id())).toList();
  }

  private static Assessments all(List<Supplier<List<Assessment>>> media) {
    return new Assessments(
        media.parallelStream().flatMap(medium -> medium.get().stream()).toList());
  }
}
