package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.record.PairCategory;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.record.SweepPoint;
import wallbook.record.TestLimit;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses one test of a balanced-pair run: its parts, then the whole. */
final class TestAssessor {
  private final WireMapAssessor wireMaps;
  private final LineAssessor lines;
  private final ScalarAssessor scalars;
  private final WholeTestAssessor whole;

  TestAssessor(Tables tables) {
    wireMaps = new WireMapAssessor(tables);
    lines = new LineAssessor(tables);
    scalars = new ScalarAssessor(tables);
    whole = new WholeTestAssessor(tables);
  }

  JudgedTest assess(Run run, RunTest test, List<SweepPoint> sweep) {
    List<Assessment> parts = new ArrayList<>();
    wireMaps.assess(test, sweep).ifPresent(parts::add);
    parts.addAll(lines.assess(test, sweep));
    parts.addAll(scalars.assess(run, test));
    Assessment result = whole.assess(test, parts);
    Optional<PairCategory> lower =
        result.verdict() == Verdict.BEYOND ? lower(test, sweep) : Optional.empty();
    lower.map(category -> lowerMet(test, category, result)).ifPresent(parts::add);
    parts.add(result);
    return new JudgedTest(test, parts, result.verdict(), wireMaps.faults(test), lower);
  }

  /** Whether both ends of the run are wired alike. */
  Optional<Assessment> wiring(Run run) {
    return wireMaps.wiring(run);
  }

  /** Highest category below that of the limit whose every line the sweep meets. */
  private Optional<PairCategory> lower(RunTest test, List<SweepPoint> sweep) {
    if (test.limit().isEmpty()) {
      return Optional.empty();
    }
    TestLimit limit = test.limit().get();
    List<PairCategory> categories = new ArrayList<>(List.of(PairCategory.values()));
    Collections.reverse(categories);
    return categories.stream()
        .filter(category -> category.compareTo(limit.category()) < 0)
        .filter(
            category ->
                lines.meets(
                    sweep,
                    new TestLimit(
                        limit.origin(), limit.standard(), category, limit.configuration())))
        .findFirst();
  }

  private static Assessment lowerMet(RunTest test, PairCategory category, Assessment result) {
    Phrase asked = Phrase.of("pairs.test.lower", "date", test.date());
    return Assessment.of(test.run(), "pairs.test.lower-category", asked)
        .limitedBy(
            Phrase.of("pairs.test.lower-met", "category", PairWords.category(category.word())))
        .verdict(Verdict.INFORMATION, result.source());
  }
}
