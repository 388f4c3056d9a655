package wallbook.compose.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.compose.Describe;
import wallbook.record.Finish;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the strips of plates and boxes: one for each that has a label or a cable. */
final class PlateStrips {
  private static final Set<PlaceKind> PLATES =
      EnumSet.of(PlaceKind.WALL_PLATE, PlaceKind.BLANK_PLATE, PlaceKind.BOX, PlaceKind.FLOOR_BOX);

  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Guarded guarded;
  private final CodeText codes;

  PlateStrips(Job job, Wording wording, Guarded guarded, CodeText codes) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.guarded = guarded;
    this.codes = codes;
  }

  List<PlateStrip> strips() {
    return job.places().stream()
        .filter(place -> PLATES.contains(place.kind()))
        .filter(place -> place.label().isPresent() || !job.runsAt(place).isEmpty())
        .map(this::strip)
        .toList();
  }

  private record Jack(String number, String text, String label) {}

  private PlateStrip strip(Place place) {
    List<Jack> jacks = jacks(place);
    String labels = jacks.stream().map(Jack::label).collect(Collectors.joining(", "));
    String title = place.label().orElse(place.name());
    if (guarded.is(place)) {
      title = place.label().orElse(labels);
    }
    String space = job.space(place.space()).name();
    List<String> where =
        guarded.is(place)
            ? List.of()
            : place
                .label()
                .map(label -> List.of(space + ", " + place.name(), space))
                .orElse(List.of(space));
    List<String> code =
        guarded.is(place)
            ? List.of(title)
            : codes.of(
                title, where.stream().map(w -> labels.isEmpty() ? w : w + " | " + labels).toList());
    Set<String> names = new HashSet<>(Set.of(title, place.id()));
    jacks.forEach(jack -> names.add(jack.label()));
    return new PlateStrip(
        title,
        where,
        jacks.stream().map(Jack::text).toList(),
        code,
        names,
        place.origin().position(place.label().isPresent() ? "label" : "name"));
  }

  private List<Jack> jacks(Place place) {
    List<Jack> jacks = new ArrayList<>();
    for (Run run : job.runsAt(place)) {
      Stream.of(run.from(), run.to())
          .filter(end -> end.place().equals(Optional.of(place.id())))
          .map(end -> jack(run, end))
          .forEach(jacks::add);
    }
    // Jacks in their order, cables without one after them.
    jacks.sort(
        Comparator.comparing((Jack j) -> j.number().isEmpty())
            .thenComparing(j -> j.number().length())
            .thenComparing(Jack::number));
    return jacks;
  }

  private Jack jack(Run run, RunEnd end) {
    String number = end.jack().orElse("");
    String text = number.isEmpty() ? run.label() : number + "\u00a0" + run.label();
    if (end.finish() != Finish.TERMINATED) {
      text =
          wording.say(
              Phrase.of("label.not-finished", "label", text, "how", describe.word(end.finish())));
    }
    return new Jack(number, text, run.label());
  }
}
