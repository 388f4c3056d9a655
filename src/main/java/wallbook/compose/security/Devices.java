package wallbook.compose.security;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.Discretion;
import wallbook.compose.result.Results;
import wallbook.compose.security.AnnexView.Device;
import wallbook.compose.security.AnnexView.Kind;
import wallbook.compose.security.AnnexView.Wire;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** The devices that watch a house, numbered through, by kind. */
final class Devices {
  private static final List<PlaceUse> KINDS =
      List.of(
          PlaceUse.KEYPAD,
          PlaceUse.CONTACT,
          PlaceUse.MOTION_SENSOR,
          PlaceUse.GLASS_BREAK_SENSOR,
          PlaceUse.REPEATER,
          PlaceUse.CAMERA);

  private static final String NONE = "—";

  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Describe describe;
  private final Results results;
  private final Map<Place, Integer> numbers = new LinkedHashMap<>();
  private final Map<String, String> assumed = new LinkedHashMap<>();

  Devices(Composition composition, Discretion discretion, Results results) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.results = results;
    for (PlaceUse kind : KINDS) {
      job.places().stream()
          .filter(place -> place.use() == kind && discretion.isPrivate(place))
          .forEach(place -> numbers.put(place, numbers.size() + 1));
    }
  }

  /** Every device with its number, counted from 1. */
  Map<Place, Integer> numbers() {
    return numbers;
  }

  /** What the answers about their cables take for granted. */
  List<String> assumed() {
    return List.copyOf(assumed.values());
  }

  List<Kind> kinds() {
    List<Kind> kinds = new ArrayList<>();
    for (PlaceUse kind : KINDS) {
      List<Device> devices =
          numbers.keySet().stream().filter(p -> p.use() == kind).map(this::device).toList();
      if (!devices.isEmpty()) {
        kinds.add(new Kind(describe.word(kind), devices));
      }
    }
    return kinds;
  }

  private Device device(Place place) {
    return new Device(
        wording.print(numbers.get(place)),
        place.name(),
        job.space(place.space()).name(),
        describe.where(place),
        place.note(),
        job.runsAt(place).stream().map(run -> wire(run, place)).toList());
  }

  private Wire wire(Run run, Place here) {
    return new Wire(
        run.label(),
        describe.cable(run),
        describe.shortEnd(describe.otherEnd(run, here)),
        run.length().map(wording::print).orElse(NONE),
        describe.state(run),
        describe.tested(run),
        computed(run));
  }

  /** Power over the pairs of a camera; the drop of a supply, where its load is recorded. */
  private List<String> computed(Run run) {
    if (run.condition() == RunCondition.DAMAGED || run.condition() == RunCondition.ABANDONED) {
      return List.of();
    }
    List<Assessment> answers = new ArrayList<>();
    assessments.find(run.id(), "pairs.poe.highest").ifPresent(answers::add);
    if (run.feed().isPresent()) {
      assessments.find(run.id(), "dc.end-voltage").ifPresent(answers::add);
      assessments.find(run.id(), "dc.drop.10-percent").ifPresent(answers::add);
    }
    answers.forEach(this::assume);
    return answers.stream().map(results::line).toList();
  }

  private void assume(Assessment answer) {
    for (Phrase assumption : answer.assumptions()) {
      assumed.putIfAbsent(assumption.key(), wording.say(assumption));
    }
  }

  /** Name of the device that a run ends at, if it ends at one. */
  Optional<String> nameAt(Run run) {
    return numbers.keySet().stream()
        .filter(place -> job.runsAt(place).contains(run))
        .map(place -> wording.print(numbers.get(place)) + " " + place.name())
        .findFirst();
  }
}
