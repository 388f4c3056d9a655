package wallbook.assess.fibre;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.record.PathPiece;
import wallbook.record.Run;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Least bend radius of a fibre run at rest and under load, held against the tightest bend recorded
 * of the conduits it passes through.
 */
final class BendJudge {
  private final BendRule rule;

  BendJudge(Tables tables) {
    rule = new BendRule(tables);
  }

  List<Assessment> of(Job job, Run run) {
    Cable cable = job.cableOf(run);
    Optional<Length> tightest =
        run.conduits().stream()
            .flatMap(id -> job.conduit(id).path().stream())
            .map(PathPiece::radius)
            .flatMap(Optional::stream)
            .min(Comparator.naturalOrder());
    return List.of(
        judge(run, "at-rest", rule.atRest(cable), tightest, rule.source(cable)),
        judge(run, "under-load", rule.underLoad(cable), tightest, rule.source(cable)));
  }

  private static Assessment judge(
      Run run, String state, Optional<Length> least, Optional<Length> bend, Source source) {
    Assessment.Builder result =
        Assessment.of(run.id(), "fibre.bend." + state, Phrase.of("fibre.asked.bend." + state));
    if (least.isEmpty()) {
      return result.notStated(List.of(Phrase.of("fibre.missing.diameter")), source);
    }
    Length radius = least.get();
    if (bend.isEmpty()) {
      return result.value(radius).verdict(Verdict.INFORMATION, source);
    }
    Length left = bend.get().minus(radius);
    boolean holds = left.inMetres() >= 0;
    return result
        .value(bend.get())
        .limit(radius, left)
        .limitedBy(
            Phrase.of(
                holds ? "fibre.limit.bend" : "fibre.short.bend",
                "bend",
                bend.get(),
                "least",
                radius))
        .verdict(holds ? Verdict.WITHIN : Verdict.BEYOND, source);
  }
}
