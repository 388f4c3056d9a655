package wallbook.assess.location;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.TapedLength;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.record.Run;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Assesses where the places of a job are and whether the lengths of its runs are possible: ties of
 * outdoor places with their point, their sureness and the words to find it again; coordinates of
 * every place; recorded and measured lengths against the straight line between the ends.
 */
public final class LocationAssessor {
  private static final Source RECORD = new Source("the job record", Standing.CONFIRMED);

  private final Tables tables;
  private final TieAssessor ties;
  private final RunLengthAssessor lengths;

  public LocationAssessor(Tables tables) {
    this.tables = tables;
    this.ties = new TieAssessor(tables);
    this.lengths = new RunLengthAssessor(tables);
  }

  /** All assessments: of the places in the order of the record, then of the runs. */
  public List<Assessment> assess(Job job) {
    Positions positions = new Positions(job, tables);
    List<Assessment> found = new ArrayList<>();
    for (Place place : job.places()) {
      found.add(position(place, positions.of(place)));
      found.addAll(ties.about(place, job));
    }
    for (Run run : job.runs()) {
      found.addAll(lengths.about(run, job, positions));
    }
    return List.copyOf(found);
  }

  /** What is to be said of the length of one run. */
  public List<Assessment> assess(Job job, Run run) {
    return lengths.about(run, job, new Positions(job, tables));
  }

  /** The coordinates stand in the question's words, since a result has one value: the height. */
  private static Assessment position(Place place, Position position) {
    if (position.plan().isEmpty()) {
      return Assessment.of(place.id(), "location.position", Phrase.of("location.position.asked"))
          .notStated(position.missing(), RECORD);
    }
    Point plan = position.plan().get();
    Assessment.Builder asked =
        Assessment.of(
            place.id(),
            "location.position",
            Phrase.of(
                position.height().isPresent()
                    ? "location.position.with-height"
                    : "location.position.on-plan",
                "x",
                TapedLength.of(plan.x()),
                "y",
                TapedLength.of(plan.y())));
    position.height().ifPresent(height -> asked.value(TapedLength.of(height)));
    return asked.verdict(Verdict.INFORMATION, RECORD);
  }
}
