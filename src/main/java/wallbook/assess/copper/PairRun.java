package wallbook.assess.copper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.quantity.Temperature;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.record.PairCategory;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunTest;
import wallbook.record.TestKind;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/** A balanced-pair run with all that its capabilities rest on. */
final class PairRun {
  /** Pairs that a cable is taken to have if its record does not say. */
  private static final int USUAL_PAIRS = 4;

  private final Run run;
  private final Cable cable;
  private final CableTemperature temperature;
  private final List<JudgedTest> tests;
  private final Optional<JudgedTest> failed;
  private final List<WireFault> faults;

  PairRun(Job job, Run run, List<JudgedTest> tests) {
    this.run = run;
    this.cable = job.cableOf(run);
    this.temperature = CableTemperature.of(job, run);
    this.tests = List.copyOf(tests);
    this.failed = failed(this.tests);
    this.faults =
        newest(this.tests.stream().filter(t -> WireMap.isIn(t.test())))
            .map(JudgedTest::faults)
            .orElse(List.of());
  }

  Run run() {
    return run;
  }

  Cable cable() {
    return cable;
  }

  Temperature temperature() {
    return temperature.temperature();
  }

  Optional<Length> length() {
    return run.length();
  }

  int pairs() {
    return cable.pairs().orElse(USUAL_PAIRS);
  }

  /** Screened only if the record says so: the unscreened limits are the shorter ones. */
  boolean screened() {
    return cable.screened().orElse(false);
  }

  /** Category it may be used as: the cable's, or the lower one that a failing test still meets. */
  Optional<PairCategory> category() {
    return failed.flatMap(JudgedTest::lower).or(cable::category);
  }

  /** Why nothing can be carried; empty for a cable that is whole. */
  Optional<Phrase> unusable() {
    if (run.condition() == RunCondition.DAMAGED) {
      return Optional.of(Phrase.of("pairs.damaged"));
    }
    return run.condition() == RunCondition.ABANDONED
        ? Optional.of(Phrase.of("pairs.abandoned"))
        : Optional.empty();
  }

  /** Faults that the newest wire map shows on any of the given pairs, in words. */
  Optional<Phrase> faultOn(List<String> pairs) {
    if (faults.isEmpty()) {
      return Optional.empty();
    }
    return PairWords.list(
            faults.stream()
                .filter(fault -> pairs.stream().anyMatch(fault.pairs()::contains))
                .map(WireFault::phrase)
                .toList())
        .map(found -> Phrase.of("pairs.fault-first", "fault", found));
  }

  /** Loop resistance measured in the newest test that has one. */
  Optional<RunTest> resistanceTest() {
    return newest(tests.stream().filter(t -> t.test().loopResistance().isPresent()))
        .map(JudgedTest::test);
  }

  /** Starts an assessment of this run. */
  Assessment.Builder ask(String topic, Phrase asked) {
    return Assessment.of(run.id(), topic, asked);
  }

  /** Names the temperature that the assessment rests on. */
  void assumeTemperature(Assessment.Builder builder) {
    builder.assuming(temperature.assumption());
  }

  /** Names what is taken for granted of ends and tests. */
  void assumeState(Assessment.Builder builder) {
    if (!run.isTerminated()) {
      builder.assuming(Phrase.of("pairs.once-terminated"));
    }
    if (cable.pairs().isEmpty()) {
      builder.assuming(Phrase.of("pairs.four-pairs-assumed"));
    }
    if (tests.isEmpty()) {
      builder.assuming(Phrase.of("pairs.untested"));
    }
    failed.ifPresent(test -> assumeFailed(test, builder));
  }

  /** What is within the limits of a lower category is sure; else only a repair makes it true. */
  private static void assumeFailed(JudgedTest test, Assessment.Builder builder) {
    test.lower()
        .ifPresentOrElse(
            lower ->
                builder.assuming(
                    Phrase.of(
                        "pairs.failed-test-lower",
                        "date",
                        test.test().date(),
                        "category",
                        PairWords.category(lower.word()))),
            () -> builder.onlyIf(Phrase.of("pairs.failed-test", "date", test.test().date())));
  }

  /**
   * Ends an assessment of something that the run could carry: what is within its limit is
   * conditional where a test failed, for then only a repair makes it true.
   */
  Assessment end(Assessment.Builder builder, Verdict verdict, Source source) {
    assumeState(builder);
    boolean doubtful = failed.filter(test -> test.lower().isEmpty()).isPresent();
    return builder.verdict(
        verdict == Verdict.WITHIN && doubtful ? Verdict.CONDITIONAL : verdict, source);
  }

  /** A failing test that no newer one of its kind has made good. */
  private static Optional<JudgedTest> failed(List<JudgedTest> tests) {
    return Stream.of(TestKind.values())
        .flatMap(kind -> newest(tests.stream().filter(t -> t.test().kind() == kind)).stream())
        .filter(test -> test.whole() == Verdict.BEYOND)
        .findFirst();
  }

  /** The newest of the tests; of those of one day the last recorded. */
  private static Optional<JudgedTest> newest(Stream<JudgedTest> tests) {
    return tests.reduce((a, b) -> a.test().date().isAfter(b.test().date()) ? a : b);
  }
}
