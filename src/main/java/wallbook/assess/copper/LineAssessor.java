package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.record.PairParameter;
import wallbook.record.RunTest;
import wallbook.record.SweepPoint;
import wallbook.record.TestKind;
import wallbook.record.TestLimit;
import wallbook.record.TestStandard;
import wallbook.record.WorstValue;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Judges what a test says in decibels against the limit lines: each quantity of a full sweep point
 * by point, or the worst values of a summary by what they give.
 */
final class LineAssessor {
  private static final List<PairParameter> SWEPT =
      List.of(
          PairParameter.INSERTION_LOSS,
          PairParameter.NEXT,
          PairParameter.PSNEXT,
          PairParameter.ACRF,
          PairParameter.PSACRF,
          PairParameter.RETURN_LOSS);

  private final LimitLines lines;
  private final Table standards;
  private final SweepAssessor sweeps;
  private final SummaryAssessor summaries = new SummaryAssessor();

  LineAssessor(Tables tables) {
    lines = new LimitLines(tables);
    standards = tables.table("pair-standards");
    sweeps = new SweepAssessor(tables);
  }

  /** Assessments of a test's swept quantities, in a fixed order; none if it has no such values. */
  List<Assessment> assess(RunTest test, List<SweepPoint> sweep) {
    List<PairParameter> given = SWEPT.stream().filter(p -> gives(test, sweep, p)).toList();
    if (given.isEmpty()) {
      return List.of();
    }
    if (test.limit().isEmpty()) {
      Phrase asked =
          Phrase.of(
              "pairs.test.asked-plain", "what", PairWords.of(given.get(0)), "date", test.date());
      return List.of(
          Assessment.of(test.run(), "pairs.test.limit", asked)
              .notStated(
                  List.of(Phrase.of("pairs.missing.test-limit")),
                  standards.row(TestStandard.TIA_568_2_D.word()).source()));
    }
    TestLimit limit = test.limit().get();
    List<Assessment> assessments = new ArrayList<>();
    for (PairParameter parameter : given) {
      assessments.add(assess(test, sweep, limit, limit.standard(), parameter));
      if (parameter == PairParameter.INSERTION_LOSS
          && limit.standard() != TestStandard.ISO_11801_1) {
        assessments.add(assess(test, sweep, limit, TestStandard.ISO_11801_1, parameter));
      }
    }
    if (test.kind() == TestKind.CERTIFICATION && given.size() < SWEPT.size()) {
      assessments.add(missing(test, limit, given));
    }
    return assessments;
  }

  /** Whether a full sweep meets every line of another category, so that it may serve as that. */
  boolean meets(List<SweepPoint> sweep, TestLimit as) {
    return SWEPT.stream()
        .allMatch(
            parameter ->
                lines
                    .line(as.standard(), as.category(), as.configuration(), parameter)
                    .filter(line -> sweeps.meets(sweep, line, as.configuration()))
                    .isPresent());
  }

  private Assessment assess(
      RunTest test,
      List<SweepPoint> sweep,
      TestLimit limit,
      TestStandard standard,
      PairParameter parameter) {
    TestLimit against =
        new TestLimit(limit.origin(), standard, limit.category(), limit.configuration());
    Row name = standards.row(standard.word());
    Phrase asked =
        Phrase.of(
            "pairs.test.asked",
            "what",
            PairWords.of(parameter),
            "limit",
            PairWords.limit(against, name.text("name")),
            "date",
            test.date());
    String beside = standard == limit.standard() ? "" : ".iso";
    Assessment.Builder builder =
        Assessment.of(test.run(), "pairs.test." + PairWords.slug(parameter) + beside, asked);
    Optional<LimitLine> line =
        lines.line(standard, limit.category(), limit.configuration(), parameter);
    if (line.isEmpty()) {
      return builder
          .limitedBy(Phrase.of("pairs.test.no-line", "standard", name.text("name")))
          .verdict(Verdict.INFORMATION, name.source());
    }
    Accuracy accuracy = new Accuracy(test.accuracy());
    if (has(sweep, parameter)) {
      return sweeps.assess(builder, sweep, line.get(), limit.configuration(), accuracy);
    }
    return summaries.assess(builder, worst(test, parameter).orElseThrow(), line.get(), accuracy);
  }

  private Assessment missing(RunTest test, TestLimit limit, List<PairParameter> given) {
    List<Phrase> missing =
        SWEPT.stream()
            .filter(p -> !given.contains(p))
            .map(p -> Phrase.of("pairs.missing.parameter", "parameter", PairWords.of(p)))
            .toList();
    Row name = standards.row(limit.standard().word());
    Phrase asked =
        Phrase.of(
            "pairs.test.complete",
            "limit",
            PairWords.limit(limit, name.text("name")),
            "date",
            test.date());
    return Assessment.of(test.run(), "pairs.test.complete", asked)
        .notStated(missing, name.source());
  }

  private static boolean gives(RunTest test, List<SweepPoint> sweep, PairParameter parameter) {
    return has(sweep, parameter) || worst(test, parameter).isPresent();
  }

  private static boolean has(List<SweepPoint> sweep, PairParameter parameter) {
    return sweep.stream().anyMatch(point -> point.parameter() == parameter);
  }

  private static Optional<WorstValue> worst(RunTest test, PairParameter parameter) {
    return test.worst().stream()
        .filter(worst -> worst.parameter() == parameter)
        .min(
            (a, b) ->
                Double.compare(
                    a.margin().map(Decibels::inDecibels).orElse(Double.MAX_VALUE),
                    b.margin().map(Decibels::inDecibels).orElse(Double.MAX_VALUE)));
  }
}
