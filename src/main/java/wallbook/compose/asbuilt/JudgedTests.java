package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.asbuilt.TestsView.Cell;
import wallbook.compose.asbuilt.TestsView.CertifiedRow;
import wallbook.compose.asbuilt.TestsView.MeasuredRow;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.Results;
import wallbook.compose.result.TestParts;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.record.TestKind;
import wallbook.record.TestLimit;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Tests with figures: certifications, parameter by parameter, and the others in short. */
final class JudgedTests {
  /** Parameters of a certification over frequency, then its single figures: its columns. */
  private static final List<String> SWEPT =
      List.of("insertion-loss", "next", "psnext", "acrf", "psacrf", "return-loss");

  private static final List<String> SINGLE = List.of("length", "delay", "skew", "loop-resistance");

  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Results results;
  private final Describe describe;

  JudgedTests(Composition composition, Results results) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.results = results;
    this.describe = composition.describe();
  }

  /** Whether a test has something measured. */
  static boolean hasFigures(RunTest test) {
    return test.length().isPresent()
        || test.loopResistance().isPresent()
        || test.delay().isPresent()
        || !test.wireMap().isEmpty()
        || !test.worst().isEmpty()
        || test.sweep().isPresent()
        || !test.losses().isEmpty();
  }

  List<String> parameters() {
    return Stream.concat(SWEPT.stream(), SINGLE.stream())
        .map(p -> wording.say("asbuilt.tests.column." + p))
        .toList();
  }

  List<CertifiedRow> certified() {
    List<CertifiedRow> rows = new ArrayList<>();
    for (Run run : job.runs()) {
      for (TestParts test : TestParts.of(job, run, assessments)) {
        if (test.test().kind() == TestKind.CERTIFICATION) {
          rows.add(
              new CertifiedRow(
                  run.label(),
                  test.test().date().toString(),
                  test.test().limit().map(this::limit).orElse(RunText.NONE),
                  describe.word(test.test().result()),
                  test.whole().map(w -> results.verdict(w.verdict())).orElse(RunText.NONE),
                  Stream.concat(
                          SWEPT.stream().map(p -> cell(test.part(p), true)),
                          SINGLE.stream().map(p -> cell(test.part(p), false)))
                      .toList()));
        }
      }
    }
    return rows;
  }

  private String limit(TestLimit limit) {
    return wording.say(
        Phrase.of(
            "asbuilt.tests.limit",
            "category",
            describe.word(limit.category()),
            "configuration",
            describe.word(limit.configuration()),
            "standard",
            describe.word(limit.standard())));
  }

  /** The pair and frequency say more of a swept parameter than the name of the limit. */
  private Cell cell(Optional<Assessment> part, boolean swept) {
    if (part.isEmpty()) {
      return new Cell(RunText.NONE, "", "", "");
    }
    ResultView view = results.view(part.get());
    String value =
        view.limit().isEmpty()
            ? view.value().orElse("")
            : wording.say(
                Phrase.of(
                    "asbuilt.tests.of-limit",
                    "value",
                    view.value().orElse(RunText.NONE),
                    "limit",
                    view.limit().get()));
    return new Cell(
        view.margin().orElseGet(view::verdict),
        value,
        swept ? CapacityGroups.decides(view) : "",
        view.source());
  }

  /** Tests with figures that are neither certifications nor optical losses. */
  List<MeasuredRow> measured() {
    List<MeasuredRow> rows = new ArrayList<>();
    for (Run run : job.runs()) {
      for (TestParts test : TestParts.of(job, run, assessments)) {
        if (hasFigures(test.test())
            && test.test().kind() != TestKind.CERTIFICATION
            && test.test().losses().isEmpty()) {
          rows.add(measured(run, test));
        }
      }
    }
    return rows;
  }

  private MeasuredRow measured(Run run, TestParts parts) {
    RunTest test = parts.test();
    Optional<Assessment> wires = parts.part("wire-map");
    Optional<Assessment> length = parts.part("length");
    return new MeasuredRow(
        run.label(),
        describe.word(test.kind()),
        test.date().toString(),
        describe.word(test.result()),
        wires.flatMap(Assessment::limitedBy).map(wording::say).orElse(RunText.NONE),
        test.length().map(wording::print).orElse(RunText.NONE),
        test.loopResistance().map(wording::print).orElse(RunText.NONE),
        length.flatMap(results::margin).orElse(RunText.NONE),
        length.or(() -> wires).map(results::source).orElse(RunText.NONE));
  }
}
