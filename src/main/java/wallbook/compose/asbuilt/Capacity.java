package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.asbuilt.CapacityGroups.Item;
import wallbook.compose.asbuilt.CapacityView.Group;
import wallbook.compose.asbuilt.CapacityView.Matrix;
import wallbook.compose.asbuilt.Matrices.Line;
import wallbook.compose.asbuilt.Matrices.Question;
import wallbook.compose.result.Results;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.wording.Wording;

/**
 * What every run may carry, in compact form: pairs and fibre in groups of like results, coax in a
 * table of losses, speaker lines and supplies each with its load.
 */
final class Capacity {
  private static final String PAIRS = "N";
  private static final String OTHER_USES = "U";
  private static final String FIBRE = "F";
  private static final String COAX = "C";
  private static final String SPEAKER = "S";
  private static final String SUPPLY = "V";
  private static final String HIGHEST_ETHERNET = "pairs.ethernet.highest";

  private final Job job;
  private final Assessments assessments;
  private final CapacityView view;
  private final Map<String, String> codes = new HashMap<>();

  Capacity(Composition composition, Results results, RunText text) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    Wording wording = composition.wording();
    Describe describe = composition.describe();
    CapacityGroups groups = new CapacityGroups(wording, results, text);
    SharedRows shared = new SharedRows(assessments, wording, results, text);
    Matrices matrices = new Matrices(assessments, wording, results, describe, text);
    LineTables lines = new LineTables(job, assessments, matrices);
    List<Group> all = new ArrayList<>();
    all.addAll(grouped(groups.of(PAIRS, pairs())));
    all.addAll(grouped(groups.of(FIBRE, fibres())));
    this.view =
        new CapacityView(
            all,
            List.copyOf(groups.of(OTHER_USES, otherUses()).keySet()),
            matrix(matrices, FIBRE, Medium.FIBRE, Capacity::isFibreFigure),
            Stream.of(
                    matrix(matrices, COAX, Medium.COAX, t -> isLoss(t) && !isRepeater(t)),
                    matrix(matrices, COAX, Medium.COAX, t -> isLoss(t) && isRepeater(t)))
                .flatMap(Optional::stream)
                .toList(),
            shared.of(runs(Medium.COAX), "coax.length"),
            lines.speakers(SPEAKER),
            lines.supplies(SUPPLY),
            lines.wires(SUPPLY),
            shared.of(job.runs(), "outdoor.mark."));
    code("coax.use.", COAX);
    code("speaker.", SPEAKER);
    code("dc.", SUPPLY);
  }

  CapacityView view() {
    return view;
  }

  /** Code of what a run may carry, where anything was computed of it. */
  Optional<String> code(Run run) {
    return Optional.ofNullable(codes.get(run.id()));
  }

  private List<Group> grouped(Map<Group, List<Run>> groups) {
    groups.forEach((group, runs) -> runs.forEach(run -> codes.put(run.id(), group.code())));
    return List.copyOf(groups.keySet());
  }

  private void code(String topicPrefix, String code) {
    for (Run run : job.runs()) {
      if (!assessments.of(run.id(), topicPrefix).isEmpty()) {
        codes.putIfAbsent(run.id(), code);
      }
    }
  }

  /** A table of all questions asked of the runs of a medium under the given topics. */
  private Optional<Matrix> matrix(
      Matrices matrices, String code, Medium medium, Predicate<String> topics) {
    Set<Question> questions = new LinkedHashSet<>();
    for (Run run : runs(medium)) {
      assessments.of(run.id()).stream()
          .map(Assessment::topic)
          .filter(topics)
          .forEach(topic -> questions.add(new Question(topic, "asbuilt." + topic)));
    }
    return matrices.of(
        code,
        runs(medium).stream()
            .map(run -> new Line(run, run.serves().orElse(RunText.NONE), ""))
            .toList(),
        List.copyOf(questions),
        false);
  }

  private static boolean isFibreFigure(String topic) {
    return topic.startsWith("fibre.budget.")
        || topic.startsWith("fibre.expected.")
        || topic.startsWith("fibre.otdr.");
  }

  private static boolean isLoss(String topic) {
    return topic.startsWith("coax.use.");
  }

  private static boolean isRepeater(String topic) {
    return topic.startsWith("coax.use.repeater.");
  }

  private List<Run> runs(Medium medium) {
    return job.runs().stream().filter(run -> job.cableOf(run).medium() == medium).toList();
  }

  private List<Item> pairs() {
    List<Item> items = new ArrayList<>();
    for (Run run : runs(Medium.BALANCED_PAIR)) {
      List<Assessment> results = new ArrayList<>();
      assessments.find(run.id(), HIGHEST_ETHERNET).ifPresent(results::add);
      fastest(run).ifPresent(results::add);
      assessments.find(run.id(), "pairs.poe.highest").ifPresent(results::add);
      assessments.find(run.id(), "pairs.length").ifPresent(results::add);
      if (!results.isEmpty()) {
        items.add(new Item(run, results));
      }
    }
    return items;
  }

  private List<Item> otherUses() {
    return runs(Medium.BALANCED_PAIR).stream()
        .map(run -> new Item(run, assessments.of(run.id(), "pairs.use.")))
        .filter(item -> !item.results().isEmpty())
        .toList();
  }

  /** The application behind the fastest Ethernet: the last that is sure, else the last at all. */
  private Optional<Assessment> fastest(Run run) {
    List<Assessment> holding =
        assessments.of(run.id(), "pairs.ethernet.").stream()
            .filter(a -> !a.topic().equals(HIGHEST_ETHERNET) && !a.topic().endsWith(".practice"))
            .filter(Assessment::holds)
            .toList();
    return holding.stream()
        .filter(a -> a.verdict() == Verdict.WITHIN)
        .reduce((slower, faster) -> faster)
        .or(() -> holding.stream().reduce((slower, faster) -> faster));
  }

  private List<Item> fibres() {
    List<Item> items = new ArrayList<>();
    for (Run run : runs(Medium.FIBRE)) {
      List<Assessment> results = new ArrayList<>();
      assessments.of(run.id(), "fibre.application.").forEach(results::add);
      assessments.of(run.id(), "fibre.pon.").forEach(results::add);
      assessments.of(run.id(), "fibre.join.").forEach(results::add);
      assessments.find(run.id(), "fibre.tested").ifPresent(results::add);
      assessments.of(run.id(), "fibre.bend.").forEach(results::add);
      if (!results.isEmpty()) {
        items.add(new Item(run, results));
      }
    }
    return items;
  }
}
