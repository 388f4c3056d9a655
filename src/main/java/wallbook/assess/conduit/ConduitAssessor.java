package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
  private final Optional<BoxQuestions> boxes;

  private ConduitAssessor(Tables tables, List<Questions> questions, Optional<BoxQuestions> boxes) {
    this.bores = new Bores(tables);
    this.questions = questions;
    this.boxes = boxes;
  }

  /** Assesses everything. */
  public static ConduitAssessor of(Tables tables) {
    List<Questions> questions =
        List.of(
            new StateQuestions(tables),
            new FillQuestions(tables),
            new RoomQuestions(tables),
            new HeadQuestions(tables),
            new BendQuestions(tables),
            new PullQuestions(tables));
    return new ConduitAssessor(tables, questions, Optional.of(new BoxQuestions(tables)));
  }

  /** Assesses what decides whether anything more goes in: state, room and connectors. */
  public static ConduitAssessor ofRoom(Tables tables) {
    List<Questions> questions =
        List.of(new StateQuestions(tables), new RoomQuestions(tables), new HeadQuestions(tables));
    return new ConduitAssessor(tables, questions, Optional.empty());
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
    boxes.ifPresent(size -> found.addAll(size.about(job)));
    return List.copyOf(found);
  }
}
