package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.asbuilt.CapacityView.Matrix;
import wallbook.compose.asbuilt.Matrices.Line;
import wallbook.compose.asbuilt.Matrices.Question;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.Zone;

/** Speaker lines and low-voltage supplies, a row for each load that a line was assessed at. */
final class LineTables {
  private static final String LOSS = "speaker.loss";
  private static final String HALF_DECIBEL = "speaker.loss.half-db";
  private static final String FEED = "dc.";

  private static final List<Question> SPEAKERS =
      List.of(
          new Question(HALF_DECIBEL, "asbuilt.speakers.loss"),
          new Question("speaker.share.5-percent", "asbuilt.speakers.share"),
          new Question("speaker.share.10-percent", "asbuilt.speakers.share"),
          new Question("speaker.load", "asbuilt.speakers.load"),
          new Question("speaker.damping", "asbuilt.speakers.damping"));

  private static final List<Question> SUPPLIES =
      List.of(
          new Question("dc.drop.3-percent", "asbuilt.supplies.drop"),
          new Question("dc.drop.5-percent", "asbuilt.supplies.drop"),
          new Question("dc.drop.10-percent", "asbuilt.supplies.drop"),
          new Question("dc.end-voltage", "asbuilt.supplies.end"),
          new Question("dc.load.10-percent", "asbuilt.supplies.load"),
          new Question("dc.class-2", "asbuilt.supplies.class-2"));

  private static final List<Question> WIRES =
      List.of(
          new Question("dc.load.3-percent.12-v", "asbuilt.supplies.wire"),
          new Question("dc.load.10-percent.12-v", "asbuilt.supplies.wire"),
          new Question("dc.load.3-percent.24-v", "asbuilt.supplies.wire"),
          new Question("dc.load.10-percent.24-v", "asbuilt.supplies.wire"));

  private final Job job;
  private final Assessments assessments;
  private final Matrices matrices;

  LineTables(Job job, Assessments assessments, Matrices matrices) {
    this.job = job;
    this.assessments = assessments;
    this.matrices = matrices;
  }

  Optional<Matrix> speakers(String code) {
    List<Line> lines = new ArrayList<>();
    for (Run run : job.runs()) {
      loads(run).forEach(load -> lines.add(new Line(run, zone(run), load)));
    }
    return matrices.of(code, lines, SPEAKERS, true);
  }

  /** Ends of the topics that tell the loads of a line apart; the empty one for its own load. */
  private Set<String> loads(Run run) {
    Set<String> loads = new LinkedHashSet<>();
    for (Assessment a : assessments.of(run.id(), LOSS)) {
      boolean judged = a.topic().startsWith(HALF_DECIBEL);
      loads.add(a.topic().substring((judged ? HALF_DECIBEL : LOSS).length()));
    }
    return loads;
  }

  private String zone(Run run) {
    return job.zones().stream()
        .filter(
            zone -> zone.speakers().stream().anyMatch(s -> s.run().equals(Optional.of(run.id()))))
        .map(Zone::name)
        .reduce((first, second) -> first + ", " + second)
        .or(run::serves)
        .orElse(RunText.NONE);
  }

  Optional<Matrix> supplies(String code) {
    return matrices.of(code, feeds(true), SUPPLIES, true);
  }

  Optional<Matrix> wires(String code) {
    return matrices.of(code, feeds(false), WIRES, true);
  }

  private List<Line> feeds(boolean loaded) {
    return job.runs().stream()
        .filter(run -> !assessments.of(run.id(), FEED).isEmpty())
        .filter(run -> assessments.of(run.id(), "dc.drop.").isEmpty() != loaded)
        .map(run -> new Line(run, run.serves().orElse(RunText.NONE), ""))
        .toList();
  }
}
