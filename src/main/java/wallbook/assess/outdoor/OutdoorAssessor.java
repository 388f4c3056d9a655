package wallbook.assess.outdoor;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.StubOut;
import wallbook.reference.Tables;

/**
 * Assesses what lies outdoors.
 *
 * <p>Topics: {@code outdoor.cover} of a stub-out, {@code outdoor.cover-to-lay.garden} and {@code
 * .driveway} of the line still to be laid from it, {@code outdoor.mark.buried}, {@code
 * .outdoor-exposed} and {@code .outdoor-conduit} of a run of any medium that is not abandoned.
 */
public final class OutdoorAssessor {
  private final CoverAssessor covers;
  private final MarkAssessor marks;

  public OutdoorAssessor(Tables tables) {
    covers = new CoverAssessor(new BurialCover(tables));
    marks = new MarkAssessor(tables);
  }

  /** What is to be said of stub-outs, then of runs, each in the order of the record. */
  public List<Assessment> assess(Job job) {
    List<Assessment> all = new ArrayList<>();
    for (StubOut stubOut : job.stubOuts()) {
      all.addAll(covers.assess(job, stubOut));
    }
    job.runs().forEach(run -> all.addAll(assess(job, run)));
    return List.copyOf(all);
  }

  /** What is to be said of one run. */
  public List<Assessment> assess(Job job, Run run) {
    return run.condition() == RunCondition.ABANDONED ? List.of() : marks.assess(job, run);
  }
}
