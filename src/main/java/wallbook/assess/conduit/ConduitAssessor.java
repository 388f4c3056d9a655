package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.reference.Tables;

/**
 * Assesses every conduit of a job: bore, state, fill by the code's table and by practice, how many
 * more of each cable type it takes, the connectors that pass, its bends and pull points, and the
 * pull from the better end; and the size of each pull box.
 *
 * <p>Nothing new is said to go into a conduit that was not shown to be clear: such results are
 * conditional, and beyond the limit where it is crushed or blocked.
 */
public final class ConduitAssessor {
  private final Bores bores;
  private final List<Questions> questions;
  private final BoxQuestions boxes;

  public ConduitAssessor(Tables tables) {
    this.bores = new Bores(tables);
    this.questions =
        List.of(
            new StateQuestions(tables),
            new FillQuestions(tables),
            new RoomQuestions(tables),
            new HeadQuestions(tables),
            new BendQuestions(tables),
            new PullQuestions(tables));
    this.boxes = new BoxQuestions(tables);
  }

  /**
   * All assessments of the job's conduits in the order of the record, then those of its pull boxes.
   * The subject is the conduit's id, or the place's for a box.
   */
  public List<Assessment> assess(Job job) {
    List<Assessment> found = new ArrayList<>();
    for (Conduit conduit : job.conduits()) {
      ConduitCase known = ConduitCase.of(job, conduit, bores);
      questions.forEach(family -> found.addAll(family.about(known, job)));
    }
    found.addAll(boxes.about(job));
    return List.copyOf(found);
  }
}
