package wallbook.compose.labels;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.record.ConduitEnd;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Place;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Names an end of a cable or conduit in forms, the fullest first. */
final class EndForms {
  private final Job job;
  private final Wording wording;
  private final Guarded guarded;

  EndForms(Job job, Wording wording, Guarded guarded) {
    this.job = job;
    this.wording = wording;
    this.guarded = guarded;
  }

  /** Forms of an end of a run. */
  List<String> of(RunEnd end) {
    return end.head().isPresent() ? atHead(end) : atPlace(end);
  }

  private List<String> atHead(RunEnd end) {
    Head head = job.head(end.head().orElseThrow());
    Optional<String> port = end.port().map(p -> say("label.port", "port", Integer.toString(p)));
    Optional<String> name =
        end.panel().flatMap(head::panel).filter(p -> guarded.mayTell(head, p)).map(Panel::name);
    String brief = joined(" ", List.of(end.panel(), port));
    List<String> forms = new ArrayList<>();
    if (name.isPresent()) {
      forms.add(joined(", ", List.of(Optional.of(head.name()), name, port)));
    }
    forms.add(joined(", ", List.of(Optional.of(head.name()), Optional.of(brief))));
    forms.add(brief);
    return distinct(forms);
  }

  private List<String> atPlace(RunEnd end) {
    Place place = job.place(end.place().orElseThrow());
    String space = job.space(place.space()).name();
    Optional<String> jack = end.jack().map(j -> say("label.jack", "jack", j));
    String own = place.label().orElse(place.name());
    String brief = joined(place.label().isPresent() ? " " : ", ", List.of(Optional.of(own), jack));
    String full =
        place.label().isPresent()
            ? joined(", ", List.of(Optional.of(place.name()), Optional.of(brief)))
            : brief;
    List<String> forms = new ArrayList<>(List.of(space + ", " + full, space + ", " + brief, brief));
    if (place.label().isEmpty() && space.length() < brief.length()) {
      forms.add(space);
    }
    return distinct(forms);
  }

  /** Forms of an end of a conduit. */
  List<String> of(ConduitEnd end) {
    if (end.place().isPresent()) {
      Place place = job.place(end.place().get());
      String space = job.space(place.space()).name();
      if (guarded.is(place)) {
        return List.of(space);
      }
      return distinct(
          List.of(
              joined(", ", List.of(Optional.of(space), Optional.of(place.name()), place.label())),
              space + ", " + place.label().orElse(place.name()),
              place.label().orElse(place.name())));
    }
    if (end.head().isPresent()) {
      return List.of(job.head(end.head().get()).name());
    }
    return List.of(job.space(end.space().orElseThrow()).name());
  }

  private static String joined(String between, List<Optional<String>> parts) {
    return parts.stream()
        .flatMap(Optional::stream)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(between));
  }

  private static List<String> distinct(List<String> forms) {
    return List.copyOf(
        new LinkedHashSet<>(forms.stream().filter(form -> !form.isEmpty()).toList()));
  }

  private String say(String key, String name, String value) {
    return wording.say(Phrase.of(key, name, value));
  }
}
