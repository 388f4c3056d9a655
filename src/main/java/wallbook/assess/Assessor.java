package wallbook.assess;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
  private final Kept<ConduitAssessor> room;
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
    conduit = new Kept<>(() -> ConduitAssessor.of(tables));
    room = new Kept<>(() -> ConduitAssessor.ofRoom(tables));
    outdoor = new Kept<>(() -> new OutdoorAssessor(tables));
    location = new Kept<>(() -> new LocationAssessor(tables));
    practice = new Kept<>(() -> new PracticeAssessor(tables));
  }

  /** Everything that can be said of the job, medium by medium on all processors. */
  public Assessments assess(Job job) {
    return all(List.copyOf(media(job).values()));
  }

  /**
   * What a later use may rest on in some media, in the same words as if all were assessed. Of
   * conduits that is what goes in, not how it is pulled.
   *
   * @param asked media by the first word of their topics
   */
  public Assessments assessForUse(Job job, Set<String> asked) {
    Map<String, Supplier<List<Assessment>>> media = media(job);
    media.put("conduit", () -> room.get().assess(job));
    media.keySet().retainAll(asked);
    return all(List.copyOf(media.values()));
  }

  /** How each medium of a job is assessed, by the first word of its topics. */
  private Map<String, Supplier<List<Assessment>>> media(Job job) {
    Map<String, Supplier<List<Assessment>>> media = new LinkedHashMap<>();
    media.put("pairs", () -> copper.get().assess(job));
    media.put("fibre", () -> fibre.get().assess(job));
    media.put("coax", () -> coax.get().assess(job));
    media.put("speaker", () -> speaker.get().assess(job));
    media.put("dc", () -> lowVoltage.get().assess(job));
    media.put("conduit", () -> conduit.get().assess(job));
    media.put("outdoor", () -> outdoor.get().assess(job));
    media.put("location", () -> location.get().assess(job));
    media.put("practice", () -> practice.get().assess(job));
    return media;
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
