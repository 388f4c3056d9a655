package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallbook.compose.Describe;
import wallbook.compose.RunState;
import wallbook.compose.asbuilt.AsBuiltView.OpenEnd;
import wallbook.compose.asbuilt.AsBuiltView.OpenPlace;
import wallbook.compose.figure.PhotoView;
import wallbook.compose.figure.Photographs;
import wallbook.record.Fibre;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Where every end without a connector is, so that a technician finds it behind its plate. */
final class OpenEnds {
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Photographs photographs;

  OpenEnds(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.photographs = new Photographs(job, wording);
  }

  /** Places in the order of the record, then heads, each with its open ends. */
  List<OpenPlace> places() {
    List<OpenPlace> open = new ArrayList<>();
    for (Place place : job.places()) {
      List<OpenEnd> ends =
          ends(job.runsAt(place), end -> end.place().equals(Optional.of(place.id())));
      if (!ends.isEmpty()) {
        open.add(
            new OpenPlace(
                job.space(place.space()).name() + ", " + place.name(),
                where(place),
                place.note(),
                ends));
      }
    }
    for (Head head : job.heads()) {
      List<OpenEnd> ends = ends(job.runsAt(head), end -> end.head().equals(Optional.of(head.id())));
      if (!ends.isEmpty()) {
        open.add(
            new OpenPlace(head.name(), job.space(head.space()).name(), Optional.empty(), ends));
      }
    }
    return open;
  }

  /** What the places with open ends, or their walls, looked like. */
  List<PhotoView> photos() {
    return job.places().stream()
        .filter(
            place ->
                !ends(job.runsAt(place), end -> end.place().equals(Optional.of(place.id())))
                    .isEmpty())
        .flatMap(place -> photographs.near(place).stream())
        .distinct()
        .toList();
  }

  private String where(Place place) {
    String where = describe.word(place.kind()) + ", " + describe.where(place);
    return place
        .depth()
        .map(
            depth ->
                where
                    + ", "
                    + wording.say(
                        Phrase.of(
                            "asbuilt.open.depth", "depth", wording.quantities().position(depth))))
        .orElse(where);
  }

  private List<OpenEnd> ends(List<Run> runs, Predicate<RunEnd> here) {
    List<OpenEnd> open = new ArrayList<>();
    for (Run run : runs) {
      if (RunState.of(run).isDark() || RunState.of(run) == RunState.WORKS) {
        for (RunEnd end : List.of(run.from(), run.to())) {
          if (here.test(end) && !end.isTerminated()) {
            open.add(end(run, end));
          }
        }
      }
    }
    return open;
  }

  private OpenEnd end(Run run, RunEnd end) {
    RunEnd other = run.otherThan(end);
    String found =
        end.head().isPresent()
            ? describe.shortEnd(end)
            : job.fibreOf(run).flatMap(Fibre::whereFound).or(run::note).orElse(RunText.NONE);
    return new OpenEnd(
        run.label(),
        describe.cable(run),
        describe.word(end.finish()),
        end.slack().map(wording::print).orElse(RunText.NONE),
        found,
        describe.shortEnd(other));
  }
}
