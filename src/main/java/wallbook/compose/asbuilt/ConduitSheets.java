package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.Composition;
import wallbook.compose.ConduitText;
import wallbook.compose.Describe;
import wallbook.compose.asbuilt.AsBuiltView.BoxSheet;
import wallbook.compose.asbuilt.AsBuiltView.ConduitSheet;
import wallbook.compose.asbuilt.AsBuiltView.RoomRow;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.figure.SectionDrawing;
import wallbook.compose.result.Results;
import wallbook.record.Cable;
import wallbook.record.Conduit;
import wallbook.record.FibreClass;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** A sheet for each conduit: cut across, its path, what was computed, and what more it takes. */
final class ConduitSheets {
  /** Questions of a sheet in its order; those about single cable types stand in a table. */
  private static final List<String> QUESTIONS =
      List.of(
          "conduit.clear",
          "conduit.bore",
          "conduit.fill.table-1",
          "conduit.fill.flat-40",
          "conduit.free-bore",
          "conduit.jam.nec",
          "conduit.jam.bands",
          "conduit.largest-cable.table-1",
          "conduit.largest-cable.flat-40",
          "conduit.largest-head",
          "conduit.bends.nec",
          "conduit.bends.tia-569",
          "conduit.single-bend.tia-569",
          "conduit.section-length.tia-569",
          "conduit.pull-boxes",
          "conduit.pull-box-size",
          "conduit.bend-radius.tia-569",
          "conduit.bend-radius.nec",
          "conduit.pull.contents.dry",
          "conduit.pull.contents.lubricated",
          "conduit.sidewall.contents.dry");

  private static final int MOST_OF_A_MEDIUM = 2;

  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Results results;
  private final Describe describe;
  private final RunText text;
  private final SectionDrawing sections;
  private final ConduitText words;

  ConduitSheets(Composition composition, Results results, RunText text) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.results = results;
    this.describe = composition.describe();
    this.text = text;
    this.sections = new SectionDrawing(job, assessments, wording);
    this.words = new ConduitText(job, wording);
  }

  List<ConduitSheet> conduits() {
    return job.conduits().stream().map(this::sheet).toList();
  }

  private ConduitSheet sheet(Conduit conduit) {
    List<Run> contents = SectionDrawing.contents(job, conduit);
    return new ConduitSheet(
        conduit.label(),
        conduit.name(),
        sections.of(conduit).map(Drawing.class::cast),
        words.facts(conduit),
        contents.isEmpty() ? Optional.empty() : Optional.of(text.labels(contents)),
        words.path(conduit),
        QUESTIONS.stream()
            .flatMap(topic -> assessments.find(conduit.id(), topic).stream())
            .map(results::view)
            .toList(),
        usual().stream().map(cable -> room(conduit, cable)).flatMap(Optional::stream).toList());
  }

  /**
   * The cable types that this house has most of, some of each medium, and single-mode fibre, which
   * a provider may bring.
   */
  private List<Cable> usual() {
    Map<Cable, Integer> used = new LinkedHashMap<>();
    job.runs().forEach(run -> used.merge(job.cableOf(run), 1, Integer::sum));
    Set<Cable> usual = new LinkedHashSet<>();
    for (Medium medium : Medium.values()) {
      used.keySet().stream()
          .filter(cable -> cable.medium() == medium)
          .sorted(Comparator.comparing(used::get, Comparator.reverseOrder()))
          .limit(MOST_OF_A_MEDIUM)
          .forEach(usual::add);
    }
    job.cables().stream()
        .filter(cable -> cable.fibreClass().filter(FibreClass::isSingleMode).isPresent())
        .forEach(usual::add);
    return List.copyOf(usual);
  }

  private Optional<RoomRow> room(Conduit conduit, Cable cable) {
    Optional<Assessment> byCode = more(conduit, cable, ".table-1");
    Optional<Assessment> byPractice = more(conduit, cable, ".flat-40");
    if (byCode.isEmpty() || byPractice.isEmpty()) {
      return Optional.empty();
    }
    Optional<Assessment> pull =
        assessments.find(conduit.id(), "conduit.pull." + cable.id() + ".dry");
    Set<Integer> sources = new TreeSet<>();
    List<Assessment> all = new ArrayList<>(List.of(byCode.get(), byPractice.get()));
    pull.ifPresent(all::add);
    all.forEach(a -> sources.add(Integer.valueOf(results.source(a))));
    return Optional.of(
        new RoomRow(
            cable.name(),
            count(byCode.get()),
            count(byPractice.get()),
            pull.map(this::tension).orElse(RunText.NONE),
            pull.flatMap(results::margin).orElse(RunText.NONE),
            CapacityGroups.decides(results.view(byPractice.get())),
            sources.stream().map(String::valueOf).collect(Collectors.joining(", "))));
  }

  private Optional<Assessment> more(Conduit conduit, Cable cable, String rule) {
    return assessments.find(conduit.id(), "conduit.more." + cable.id() + rule);
  }

  private String count(Assessment more) {
    return more.value()
        .map(
            value ->
                wording.say(
                    Phrase.of(
                        "asbuilt.conduits.more",
                        "count",
                        value,
                        "verdict",
                        results.verdict(more.verdict()))))
        .orElseGet(() -> results.verdict(more.verdict()));
  }

  private String tension(Assessment pull) {
    if (pull.value().isEmpty() || pull.limit().isEmpty()) {
      return results.verdict(pull.verdict());
    }
    return wording.say(
        Phrase.of(
            "asbuilt.conduits.tension", "value", pull.value().get(), "limit", pull.limit().get()));
  }

  /** Pull boxes and the size they must have. */
  List<BoxSheet> boxes() {
    return job.places().stream()
        .filter(place -> place.kind() == PlaceKind.PULL_BOX)
        .filter(place -> !assessments.of(place.id(), "conduit.box.").isEmpty())
        .map(this::box)
        .toList();
  }

  private BoxSheet box(Place place) {
    return new BoxSheet(
        place.name(),
        job.space(place.space()).name() + ", " + describe.where(place),
        assessments.of(place.id(), "conduit.box.").stream().map(results::view).toList());
  }
}
