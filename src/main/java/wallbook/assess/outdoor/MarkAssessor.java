package wallbook.assess.outdoor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.record.OutdoorRating;
import wallbook.record.Run;
import wallbook.record.RunEnvironment;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses whether a cable carries the mark that each of its outdoor surroundings asks for. */
final class MarkAssessor {
  private final Table marks;

  MarkAssessor(Tables tables) {
    marks = tables.table("outdoor-marks");
  }

  List<Assessment> assess(Job job, Run run) {
    List<Assessment> all = new ArrayList<>();
    for (RunEnvironment environment : new LinkedHashSet<>(run.environments())) {
      List<Row> serving =
          marks.rows().stream()
              .filter(row -> row.text("environment").equals(environment.word()))
              .toList();
      if (!serving.isEmpty()) {
        all.add(mark(run, job.cableOf(run), environment, serving));
      }
    }
    return all;
  }

  private Assessment mark(Run run, Cable cable, RunEnvironment environment, List<Row> serving) {
    String where = hyphened(environment.word());
    Assessment.Builder builder =
        Assessment.of(run.id(), "outdoor.mark." + where, Phrase.of("outdoor.asked.mark." + where));
    if (cable.outdoor().isEmpty()) {
      return builder.notStated(List.of(Phrase.of("outdoor.missing.marks")), marks.source());
    }
    Optional<Row> found =
        serving.stream()
            .filter(row -> carries(cable, row))
            .filter(row -> !row.yes("in_conduit_only") || !run.conduits().isEmpty())
            .findFirst();
    if (found.isEmpty()) {
      return builder
          .limitedBy(Phrase.of("outdoor.limit.unmarked." + where))
          .verdict(Verdict.BEYOND, marks.source());
    }
    builder.limitedBy(Phrase.of("outdoor.limit.marked." + hyphened(found.get().text("mark"))));
    if (found.get().yes("in_conduit_only")) {
      return builder
          .onlyIf(Phrase.of("outdoor.assume.conduit"))
          .verdict(Verdict.CONDITIONAL, marks.source());
    }
    return builder.verdict(Verdict.WITHIN, marks.source());
  }

  private static boolean carries(Cable cable, Row row) {
    return cable.outdoor().stream().map(OutdoorRating::word).anyMatch(row.text("mark")::equals);
  }

  private static String hyphened(String word) {
    return word.replace('_', '-');
  }
}
