package wallbook.compose.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wallbook.compose.Caution;
import wallbook.compose.CautionView;
import wallbook.compose.Describe;
import wallbook.compose.FactView;
import wallbook.compose.RunState;
import wallbook.quantity.Length;
import wallbook.record.ConduitEnd;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.Space;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What the cards of a page have in common: ends, states and figures in words, with their links. */
final class PageWords {
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Anchors anchors;

  PageWords(Job job, Wording wording, Anchors anchors) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.anchors = anchors;
  }

  Describe describe() {
    return describe;
  }

  Anchors anchors() {
    return anchors;
  }

  String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of("page." + key, namesAndValues));
  }

  String print(Object value) {
    return wording.print(value);
  }

  /** Where an end of a run is: its port, its panel or head, or its place. */
  Link end(RunEnd end) {
    String text = describe.end(end);
    if (end.head().isEmpty()) {
      return new Link(anchors.of(job.place(end.place().orElseThrow())), text);
    }
    Head head = job.head(end.head().get());
    return new Link(
        end.panel()
            .flatMap(head::panel)
            .map(
                panel ->
                    end.port()
                        .map(port -> anchors.of(head, panel, port))
                        .orElseGet(() -> anchors.of(head, panel)))
            .orElseGet(() -> anchors.of(head)),
        text);
  }

  /** Where an end of a conduit is. */
  Ref end(ConduitEnd end) {
    String text = describe.end(end);
    return end.place()
        .map(id -> anchors.of(job.place(id)))
        .or(() -> end.head().map(id -> anchors.of(job.head(id))))
        .or(() -> end.space().map(id -> anchors.of(job.space(id))))
        .map(anchor -> Ref.to(new Link(anchor, text)))
        .orElseGet(() -> Ref.plain(text));
  }

  /** Where exactly an end of a run is, as somebody would measure it. */
  String position(RunEnd end) {
    return end.place()
        .map(id -> describe.where(job.place(id)))
        .orElseGet(() -> where(job.head(end.head().orElseThrow())));
  }

  /** Where a head stands. */
  String where(Head head) {
    Space space = job.space(head.space());
    List<String> parts = new ArrayList<>(List.of(space.name()));
    head.wall().ifPresent(letter -> parts.add(describe.wall(space, letter)));
    head.offset().ifPresent(o -> parts.add(wording.say(position("where.offset", "offset", o))));
    head.height()
        .ifPresent(h -> parts.add(wording.say(position("where.above-floor", "height", h))));
    return String.join(", ", parts);
  }

  private Phrase position(String key, String name, Length length) {
    return Phrase.of(key, name, wording.quantities().position(length));
  }

  Link link(Run run) {
    return new Link(anchors.of(run), run.label());
  }

  Link link(Space space) {
    return new Link(anchors.of(space), space.name());
  }

  Sign state(Run run) {
    return new Sign(RunState.of(run).name().toLowerCase(Locale.ROOT), describe.state(run));
  }

  /** A cable as seen from one of its ends. */
  RoomCard.CableLine line(Run run, RunEnd here, Optional<String> jack) {
    RunEnd other = run.otherThan(here);
    return new RoomCard.CableLine(link(run), describe.cable(run), jack, end(other), state(run));
  }

  /** The cables at a place; one with both ends there stands twice. */
  List<RoomCard.CableLine> lines(Place place) {
    List<RoomCard.CableLine> lines = new ArrayList<>();
    for (Run run : job.runsAt(place)) {
      for (RunEnd end : List.of(run.from(), run.to())) {
        if (end.place().equals(Optional.of(place.id()))) {
          lines.add(line(run, end, end.jack()));
        }
      }
    }
    return lines;
  }

  /** So many cables. */
  String cables(int count) {
    return wording.say(Phrase.counted("page.cables", count));
  }

  Link link(Caution caution) {
    return new Link(Anchors.of(caution), caution(caution).heading());
  }

  CautionView caution(Caution caution) {
    return Caution.say(List.of(caution), wording).get(0);
  }

  /** Adds a figure to a list if it is recorded. */
  void fact(List<FactView> facts, String name, Optional<?> value) {
    value.ifPresent(v -> facts.add(new FactView(say("fact." + name), print(v))));
  }
}
