package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.asbuilt.CapacityView.SharedRow;
import wallbook.compose.result.Extremes;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.Results;
import wallbook.record.Run;
import wallbook.reference.Source;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** One line for each answer to a question, with all the runs that it holds for. */
final class SharedRows {
  private final Assessments assessments;
  private final Wording wording;
  private final Results results;
  private final RunText text;

  SharedRows(Assessments assessments, Wording wording, Results results, RunText text) {
    this.assessments = assessments;
    this.wording = wording;
    this.results = results;
    this.text = text;
  }

  /** What makes answers the same; the figures may differ, the least margin is shown. */
  private record Answer(
      String topic,
      String asked,
      String verdict,
      String decides,
      List<String> assumed,
      Source source) {}

  private record Held(Run run, Assessment assessment) {}

  /** The answers to the questions whose topic begins with the given words. */
  List<SharedRow> of(List<Run> runs, String topicPrefix) {
    Map<Answer, List<Held>> alike = new LinkedHashMap<>();
    int asked = 0;
    for (Run run : runs) {
      List<Assessment> its = assessments.of(run.id(), topicPrefix);
      asked += its.isEmpty() ? 0 : 1;
      for (Assessment a : its) {
        alike.computeIfAbsent(answer(a), k -> new ArrayList<>()).add(new Held(run, a));
      }
    }
    int all = asked;
    return alike.entrySet().stream()
        .sorted(Map.Entry.comparingByKey((a, b) -> a.topic().compareTo(b.topic())))
        .map(entry -> row(entry.getKey(), entry.getValue(), all))
        .toList();
  }

  private Answer answer(Assessment a) {
    ResultView view = results.view(a);
    String decides =
        Stream.concat(
                a.limitedBy().map(Phrase::key).stream(), a.missing().stream().map(Phrase::key))
            .reduce("", String::concat);
    List<String> assumed = a.assumptions().stream().map(Phrase::key).toList();
    return new Answer(a.topic(), view.asked(), view.verdict(), decides, assumed, a.source());
  }

  private SharedRow row(Answer answer, List<Held> held, int all) {
    Assessment shown =
        Extremes.leastMargin(held.stream().map(Held::assessment).toList())
            .orElse(held.get(0).assessment());
    ResultView view = results.view(shown);
    List<Run> runs = held.stream().map(Held::run).distinct().toList();
    String margin =
        view.margin()
            .map(
                m ->
                    runs.size() == 1
                        ? m
                        : wording.say(
                            Phrase.of(
                                "asbuilt.capacity.margin-at",
                                "margin",
                                m,
                                "label",
                                runOf(held, shown))))
            .orElse(RunText.NONE);
    return new SharedRow(
        answer.asked(),
        answer.verdict(),
        margin,
        CapacityGroups.decides(view),
        runs.size() == all && all > 2
            ? wording.say(Phrase.counted("asbuilt.capacity.all", all))
            : text.labels(runs),
        runs.size() == 1 ? view.assumptions() : List.of(),
        view.source());
  }

  @SuppressWarnings("ReferenceEquality") // Another run may have been assessed alike.
  private static String runOf(List<Held> held, Assessment shown) {
    return held.stream()
        .filter(h -> h.assessment() == shown)
        .map(h -> h.run().label())
        .findFirst()
        .orElseThrow();
  }
}
