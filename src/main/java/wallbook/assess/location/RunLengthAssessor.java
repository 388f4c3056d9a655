package wallbook.assess.location;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Lengths of a run: a cable cannot be shorter than the straight line between its ends, and what an
 * instrument measured should be what the record says.
 */
final class RunLengthAssessor {
  private final TieFigures figures;

  RunLengthAssessor(Tables tables) {
    this.figures = new TieFigures(tables);
  }

  List<Assessment> about(Run run, Job job, Positions positions) {
    List<Assessment> all = new ArrayList<>();
    StraightLine line = StraightLine.between(positions.of(run.from()), positions.of(run.to()));
    all.add(recorded(run, line));
    for (RunTest test : job.testsOf(run)) {
      if (test.length().isPresent()) {
        all.add(measuredAgainstLine(run, test, line));
        run.length().ifPresent(length -> all.add(measured(run, test, length)));
      }
    }
    return all;
  }

  private Assessment recorded(Run run, StraightLine line) {
    Assessment.Builder asked =
        Assessment.of(
            run.id(), "location.straight-line", Phrase.of("location.straight-line.asked"));
    List<Phrase> missing = new ArrayList<>(line.missing());
    if (run.length().isEmpty()) {
      missing.add(Phrase.of("location.missing.length"));
    }
    return missing.isEmpty()
        ? against(asked, run.length().get(), line, figures.lengthTolerance(), lineSource())
        : asked.notStated(missing, lineSource());
  }

  private Assessment measuredAgainstLine(Run run, RunTest test, StraightLine line) {
    Assessment.Builder asked =
        Assessment.of(
            run.id(),
            "location.measured-line." + test.id(),
            Phrase.of("location.measured-line.asked", "date", test.date()));
    Source source = lineSource().and(figures.source("measured-length-tolerance"));
    if (!line.missing().isEmpty()) {
      return asked.notStated(line.missing(), source);
    }
    Length measured = test.length().orElseThrow();
    Length tolerance =
        figures.lengthTolerance().plus(measured.times(figures.measuredTolerance().inFraction()));
    return against(asked, measured, line, tolerance, source);
  }

  /** Conditional where only the tolerance saves a length from being impossible. */
  private static Assessment against(
      Assessment.Builder asked, Length length, StraightLine line, Length tolerance, Source source) {
    Length least = line.distance().orElseThrow();
    Length margin = length.minus(least);
    asked.value(length).limit(least, margin);
    if (!line.heightsKnown()) {
      asked.assuming(Phrase.of("location.assume.flat"));
    }
    asked.assuming(Phrase.of("location.assume.tolerance", "tolerance", tolerance));
    if (margin.inMetres() >= 0) {
      return asked
          .limitedBy(Phrase.of("location.straight-line.longer"))
          .verdict(Verdict.WITHIN, source);
    }
    boolean saved = margin.plus(tolerance).inMetres() >= 0;
    return asked
        .limitedBy(
            Phrase.of(
                saved ? "location.straight-line.tolerance" : "location.straight-line.shorter"))
        .verdict(saved ? Verdict.CONDITIONAL : Verdict.BEYOND, source);
  }

  private Assessment measured(Run run, RunTest test, Length recorded) {
    Length measured = test.length().orElseThrow();
    Length limit =
        recorded.times(figures.measuredTolerance().inFraction()).plus(figures.lengthTolerance());
    Length difference = Length.metres(Math.abs(measured.minus(recorded).inMetres()));
    boolean agree = difference.compareTo(limit) <= 0;
    return Assessment.of(
            run.id(),
            "location.measured-length." + test.id(),
            Phrase.of("location.measured-length.asked", "date", test.date()))
        .value(difference)
        .limit(limit, limit.minus(difference))
        .limitedBy(
            Phrase.of(
                agree ? "location.measured-length.agrees" : "location.measured-length.differs",
                "measured",
                measured,
                "recorded",
                recorded))
        .verdict(
            agree ? Verdict.WITHIN : Verdict.BEYOND,
            figures.source("measured-length-tolerance").and(figures.source("length-tolerance")));
  }

  private Source lineSource() {
    return figures.source("length-tolerance");
  }
}
