package wallbook.compose.labels;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import wallbook.compose.Discretion;
import wallbook.compose.figure.PanelRuns;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Wording;

/**
 * Which cables and places tell a stranger where the house is watched and how to blind it. Their
 * labels hold no more than the label and the end at the head, and their codes no more than the
 * label. Keeps its answers, as every label asks again.
 */
final class Guarded {
  private final Job job;
  private final Discretion discretion;
  private final Map<String, Boolean> places = new HashMap<>();
  private final Map<String, Boolean> panels = new HashMap<>();

  Guarded(Job job, Wording wording) {
    this.job = job;
    this.discretion = new Discretion(job, wording);
  }

  /** Whether a place is one of a watching thing, or its name speaks of one. */
  boolean is(Place place) {
    return places.computeIfAbsent(
        place.id(), id -> discretion.isPrivate(place) || !discretion.isTellable(place.name()));
  }

  boolean is(Run run) {
    return discretion.isPrivate(run)
        || Stream.of(run.from(), run.to())
            .flatMap(end -> end.place().stream())
            .anyMatch(id -> is(job.place(id)));
  }

  /**
   * Whether an end of the run may be told: any of a run that is not guarded, else that at a head.
   */
  boolean mayTell(Run run, RunEnd end) {
    return !is(run) || end.head().isPresent();
  }

  /** Whether a panel's name may be told: not if a guarded run ends there, which it may speak of. */
  boolean mayTell(Head head, Panel panel) {
    return panels.computeIfAbsent(
        head.id() + "/" + panel.id(),
        id ->
            discretion.isTellable(panel.name())
                && PanelRuns.of(job, head, panel).used().stream()
                    .noneMatch(used -> is(used.run())));
  }
}
