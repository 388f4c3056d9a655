package wallbook.compose.asbuilt;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.assess.Assessments;
import wallbook.assess.copper.LimitLines;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.FactView;
import wallbook.compose.RunState;
import wallbook.compose.asbuilt.TestsView.FailedRow;
import wallbook.compose.asbuilt.TestsView.InstrumentRow;
import wallbook.compose.asbuilt.TestsView.LossRow;
import wallbook.compose.asbuilt.TestsView.PlainRow;
import wallbook.compose.asbuilt.TestsView.ReadingRow;
import wallbook.compose.asbuilt.TestsView.Sweep;
import wallbook.compose.asbuilt.TestsView.UntestedRow;
import wallbook.compose.figure.SweepDrawing;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.Results;
import wallbook.compose.result.TestParts;
import wallbook.record.Job;
import wallbook.record.LossReading;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.record.TestKind;
import wallbook.record.TestResult;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Everything the tests of a house say. */
final class TestResults {
  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Results results;
  private final Describe describe;
  private final RunText text;
  private final JudgedTests judged;
  private final SweepDrawing sweeps;

  TestResults(Composition composition, LimitLines lines, Results results, RunText text) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.results = results;
    this.describe = composition.describe();
    this.text = text;
    this.judged = new JudgedTests(composition, results);
    this.sweeps = new SweepDrawing(job, wording, lines);
  }

  TestsView view() {
    return new TestsView(
        figures(),
        failed(),
        judged.parameters(),
        judged.certified(),
        plots(),
        losses(),
        readings(),
        judged.measured(),
        plain(),
        untested(),
        instruments());
  }

  private List<FactView> figures() {
    Map<TestKind, Integer> telling = new EnumMap<>(TestKind.class);
    int none = 0;
    for (Run run : job.runs()) {
      Optional<RunTest> test = describe.tellingTest(run);
      test.ifPresent(t -> telling.merge(t.kind(), 1, Integer::sum));
      none += test.isEmpty() ? 1 : 0;
    }
    List<FactView> figures = new ArrayList<>();
    telling.forEach(
        (kind, count) -> figures.add(new FactView(describe.word(kind), wording.print(count))));
    figures.add(new FactView(wording.say("tested.not"), wording.print(none)));
    return figures;
  }

  private List<FailedRow> failed() {
    List<FailedRow> rows = new ArrayList<>();
    for (Run run : job.runs()) {
      for (TestParts test : TestParts.of(job, run, assessments)) {
        if (test.test().result() == TestResult.FAIL) {
          rows.add(
              new FailedRow(
                  run.label(),
                  describe.word(test.test().kind()),
                  test.test().date().toString(),
                  test.test().reason().orElse(RunText.NONE),
                  test.whole()
                      .flatMap(whole -> whole.limitedBy())
                      .map(wording::say)
                      .orElse(RunText.NONE),
                  since(run, test.test())));
        }
      }
    }
    return rows;
  }

  private String since(Run run, RunTest failed) {
    boolean mended =
        job.testsOf(run).stream()
            .anyMatch(
                test ->
                    test.kind() == failed.kind()
                        && test.result() == TestResult.PASS
                        && !test.date().isBefore(failed.date()));
    return mended
        ? describe.tested(run)
        : wording.say(Phrase.of("asbuilt.tests.no-retest", "state", describe.state(run)));
  }

  private List<Sweep> plots() {
    List<Sweep> plots = new ArrayList<>();
    for (Run run : job.runs()) {
      for (TestParts test : TestParts.of(job, run, assessments)) {
        sweeps
            .of(run, test)
            .ifPresent(
                plot ->
                    plots.add(
                        new Sweep(
                            wording.say(
                                Phrase.of(
                                    "asbuilt.tests.sweep-caption",
                                    "label",
                                    run.label(),
                                    "date",
                                    test.test().date(),
                                    "file",
                                    test.test().sweep().orElse(RunText.NONE))),
                            plot)));
      }
    }
    return plots;
  }

  private List<LossRow> losses() {
    List<LossRow> rows = new ArrayList<>();
    for (Run run : job.runs()) {
      assessments.of(run.id(), "fibre.test.").stream()
          .map(results::view)
          .forEach(view -> rows.add(loss(run, view)));
    }
    return rows;
  }

  private static LossRow loss(Run run, ResultView view) {
    return new LossRow(
        run.label(),
        view.asked(),
        view.value().orElse(RunText.NONE),
        view.limit().orElse(RunText.NONE),
        view.margin().orElse(RunText.NONE),
        view.verdict(),
        CapacityGroups.decides(view),
        view.source());
  }

  private List<ReadingRow> readings() {
    List<ReadingRow> rows = new ArrayList<>();
    for (RunTest test : job.tests()) {
      for (LossReading reading : test.losses()) {
        rows.add(
            new ReadingRow(
                job.run(test.run()).label(),
                test.date().toString(),
                reading.fibre().map(wording::print).orElse(RunText.NONE),
                wording.print(reading.wavelength()),
                reading.direction().map(describe::word).orElse(RunText.NONE),
                wording.print(reading.loss())));
      }
    }
    return rows;
  }

  /** What tests without a figure have in common. */
  private record Alike(TestKind kind, LocalDate date, TestResult result, String instrument) {}

  private List<PlainRow> plain() {
    Map<Alike, List<Run>> alike = new LinkedHashMap<>();
    for (RunTest test : job.tests()) {
      if (!JudgedTests.hasFigures(test)) {
        alike
            .computeIfAbsent(
                new Alike(
                    test.kind(),
                    test.date(),
                    test.result(),
                    test.instrument().orElse(RunText.NONE)),
                a -> new ArrayList<>())
            .add(job.run(test.run()));
      }
    }
    return alike.entrySet().stream()
        .sorted(
            Map.Entry.comparingByKey(Comparator.comparing(Alike::kind).thenComparing(Alike::date)))
        .map(
            entry ->
                new PlainRow(
                    describe.word(entry.getKey().kind()),
                    entry.getKey().date().toString(),
                    describe.word(entry.getKey().result()),
                    entry.getKey().instrument(),
                    text.labels(entry.getValue())))
        .toList();
  }

  private List<UntestedRow> untested() {
    Map<RunState, List<Run>> byState = new EnumMap<>(RunState.class);
    job.runs().stream()
        .filter(run -> job.testsOf(run).isEmpty())
        .forEach(run -> byState.computeIfAbsent(RunState.of(run), s -> new ArrayList<>()).add(run));
    return byState.values().stream()
        .map(runs -> new UntestedRow(describe.state(runs.get(0)), text.labels(runs)))
        .toList();
  }

  private record Instrument(String name, Optional<LocalDate> calibrated) {}

  private List<InstrumentRow> instruments() {
    Map<Instrument, List<RunTest>> used = new LinkedHashMap<>();
    for (RunTest test : job.tests()) {
      test.instrument()
          .ifPresent(
              name ->
                  used.computeIfAbsent(
                          new Instrument(name, test.calibrated()), i -> new ArrayList<>())
                      .add(test));
    }
    return used.entrySet().stream()
        .map(entry -> instrument(entry.getKey(), entry.getValue()))
        .toList();
  }

  private InstrumentRow instrument(Instrument instrument, List<RunTest> tests) {
    LocalDate first =
        tests.stream().map(RunTest::date).min(Comparator.naturalOrder()).orElseThrow();
    LocalDate last = tests.stream().map(RunTest::date).max(Comparator.naturalOrder()).orElseThrow();
    return new InstrumentRow(
        instrument.name(),
        instrument.calibrated().map(wording::print).orElseGet(() -> wording.say("not-recorded")),
        first.equals(last)
            ? wording.print(first)
            : wording.say(Phrase.of("asbuilt.tests.from-to", "from", first, "to", last)),
        wording.print(tests.size()));
  }
}
