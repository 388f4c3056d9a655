package wallbook.assess.coax;

import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Length of a coaxial run from the distribution device to an outlet against the residential
 * standard's limit; runs to antennas are not outlet runs and are not asked about.
 */
final class LengthJudge {
  private final Row outlet;

  LengthJudge(Tables tables) {
    outlet = tables.table("coax-lengths").row("outlet");
  }

  Optional<Assessment> of(CoaxRun run) {
    if (run.toAntenna() || run.outOfUse().isPresent()) {
      return Optional.empty();
    }
    Assessment.Builder result =
        Assessment.of(run.id(), "coax.length", Phrase.of("coax.asked.length"));
    if (run.length().isEmpty()) {
      return Optional.of(
          result.notStated(List.of(Phrase.of("coax.missing.length")), outlet.source()));
    }
    run.assumptions().forEach(result::assuming);
    Length length = run.length().get();
    Length most = Length.metres(outlet.number("length_m"));
    Length left = most.minus(length);
    boolean holds = left.inMetres() >= 0;
    return Optional.of(
        result
            .value(length)
            .limit(most, left)
            .limitedBy(
                holds
                    ? Phrase.of("coax.limit.length", "length", length, "most", most)
                    : Phrase.of(
                        "coax.short.length",
                        "length",
                        length,
                        "most",
                        most,
                        "over",
                        left.times(-1)))
            .verdict(holds ? Verdict.WITHIN : Verdict.BEYOND, outlet.source()));
  }
}
