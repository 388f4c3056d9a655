package wallbook.compose.manual;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.RunState;
import wallbook.compose.manual.ManualView.CableView;
import wallbook.compose.manual.ManualView.PlaceView;
import wallbook.compose.manual.ManualView.RoomView;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.Space;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** The manual's walk through the rooms: every place with its cables, floor by floor. */
final class RoomChapters {
  private final Job job;
  private final Wording wording;
  private final Describe describe;

  RoomChapters(Composition composition) {
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
  }

  /** The rooms that have a place, from the lowest floor up. */
  List<RoomView> all() {
    return job.spaces().stream()
        .sorted(Comparator.comparingInt(s -> job.floor(s.floor()).level()))
        .map(this::room)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Nothing is said of what isn't there. */
  private String summary(int places, int working, int waiting) {
    List<String> cables = new ArrayList<>();
    if (working > 0) {
      cables.add(wording.say(Phrase.counted("manual.working", working)));
    }
    if (waiting > 0) {
      String key = working > 0 ? "manual.waiting" : "manual.only-waiting";
      cables.add(wording.say(Phrase.counted(key, waiting)));
    }
    Phrase counted = Phrase.counted("manual.places", places);
    return cables.isEmpty()
        ? say("manual.room-summary-none", "places", counted)
        : say("manual.room-summary", "places", counted, "cables", String.join(", ", cables));
  }

  private Optional<RoomView> room(Space space) {
    List<Place> places = job.placesIn(space);
    if (places.isEmpty()) {
      return Optional.empty();
    }
    List<Run> runs = places.stream().flatMap(p -> job.runsAt(p).stream()).distinct().toList();
    int working = (int) runs.stream().filter(r -> RunState.of(r) == RunState.WORKS).count();
    int waiting = (int) runs.stream().filter(r -> RunState.of(r).isDark()).count();
    return Optional.of(
        new RoomView(
            space.name(),
            job.floor(space.floor()).name(),
            summary(places.size(), working, waiting),
            places.stream().map(this::place).toList(),
            space.note()));
  }

  private PlaceView place(Place place) {
    return new PlaceView(
        place.name(),
        describe.word(place.kind()),
        describe.where(place),
        place.label(),
        place.note(),
        job.runsAt(place).stream().map(run -> cable(run, place)).toList());
  }

  private CableView cable(Run run, Place here) {
    return new CableView(
        run.label(),
        describe.cable(run),
        describe.end(describe.otherEnd(run, here)),
        describe.state(run),
        describe.tested(run));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
