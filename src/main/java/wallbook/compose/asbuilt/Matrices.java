package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.compose.Describe;
import wallbook.compose.asbuilt.CapacityView.Column;
import wallbook.compose.asbuilt.CapacityView.Matrix;
import wallbook.compose.asbuilt.CapacityView.MatrixRow;
import wallbook.compose.result.Results;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Results of many runs side by side, a column for each question. */
final class Matrices {
  private final Assessments assessments;
  private final Wording wording;
  private final Results results;
  private final Describe describe;
  private final RunText text;

  Matrices(
      Assessments assessments, Wording wording, Results results, Describe describe, RunText text) {
    this.assessments = assessments;
    this.wording = wording;
    this.results = results;
    this.describe = describe;
    this.text = text;
  }

  /**
   * A row to be.
   *
   * @param use what the run feeds
   * @param load end of the topics that tells apart the loads a run was assessed at; often empty
   */
  record Line(Run run, String use, String load) {}

  /**
   * A column to be.
   *
   * @param topic without the load
   * @param heading words of its head, which may name the limit and what the question names; where
   *     there are none, the question is printed
   */
  record Question(String topic, String heading) {}

  /**
   * The table of the questions that were asked of a line; nothing if none was.
   *
   * @param reasons whether to say what decides
   */
  Optional<Matrix> of(String code, List<Line> lines, List<Question> questions, boolean reasons) {
    Map<Question, List<Assessment>> answers = new LinkedHashMap<>();
    for (Question question : questions) {
      List<Assessment> its =
          lines.stream().flatMap(line -> answer(line, question).stream()).toList();
      if (!its.isEmpty()) {
        answers.put(question, its);
      }
    }
    if (answers.isEmpty()) {
      return Optional.empty();
    }
    List<Column> columns = new ArrayList<>();
    answers.forEach((q, its) -> columns.add(new Column(heading(q, its.get(0)), sources(its))));
    List<MatrixRow> rows =
        lines.stream().map(line -> row(line, List.copyOf(answers.keySet()))).toList();
    return Optional.of(
        new Matrix(
            code,
            columns,
            reasons,
            rows,
            assumptions(answers.values().stream().flatMap(List::stream).toList())));
  }

  private Optional<Assessment> answer(Line line, Question question) {
    return assessments.find(line.run().id(), question.topic() + line.load());
  }

  private MatrixRow row(Line line, List<Question> questions) {
    List<Assessment> its =
        questions.stream().flatMap(question -> answer(line, question).stream()).toList();
    String decides =
        its.stream()
            .flatMap(a -> a.limitedBy().or(() -> a.missing().stream().findFirst()).stream())
            .findFirst()
            .map(wording::say)
            .orElse(RunText.NONE);
    return new MatrixRow(
        line.run().label(),
        line.use(),
        describe.cable(line.run()),
        text.plainLength(line.run()),
        decides,
        questions.stream()
            .map(question -> answer(line, question).map(this::cell).orElse(RunText.NONE))
            .toList());
  }

  private String cell(Assessment a) {
    if (a.verdict() == Verdict.INFORMATION) {
      return a.value().map(wording::print).orElse(RunText.NONE);
    }
    if (a.value().isEmpty() || a.margin().isEmpty()) {
      return results.verdict(a.verdict());
    }
    return wording.say(
        Phrase.of(
            "asbuilt.cell",
            "value",
            a.value().get(),
            "margin",
            results.margin(a.margin().get()),
            "verdict",
            results.verdict(a.verdict())));
  }

  private String heading(Question question, Assessment first) {
    if (!wording.knows(question.heading())) {
      return wording.say(first.asked());
    }
    Map<String, Object> values = new LinkedHashMap<>(first.asked().arguments());
    first.limit().ifPresent(limit -> values.put("limit", limit));
    return wording.say(new Phrase(question.heading(), values));
  }

  private String sources(List<Assessment> column) {
    Set<Integer> numbers = new TreeSet<>();
    column.stream()
        .filter(a -> a.value().isPresent())
        .forEach(a -> numbers.add(Integer.valueOf(results.source(a))));
    return String.join(", ", numbers.stream().map(String::valueOf).toList());
  }

  /** What is taken for granted; of assumptions that differ in figures only, one and how many. */
  private List<String> assumptions(List<Assessment> all) {
    Map<String, Set<String>> byKey = new LinkedHashMap<>();
    for (Assessment a : all) {
      for (Phrase assumption : a.assumptions()) {
        byKey
            .computeIfAbsent(assumption.key(), k -> new LinkedHashSet<>())
            .add(wording.say(assumption));
      }
    }
    return byKey.values().stream()
        .map(
            alike -> {
              String first = alike.iterator().next();
              return alike.size() == 1
                  ? first
                  : wording.say(
                      Phrase.counted("asbuilt.capacity.alike", alike.size() - 1, "text", first));
            })
        .toList();
  }
}
