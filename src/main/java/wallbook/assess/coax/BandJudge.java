package wallbook.assess.coax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Clauses;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.quantity.Length;
import wallbook.record.CoaxSeries;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * What a run loses over each band of each use. No standard of the tables sets a limit to it, so the
 * result informs; outside the frequencies at which the cable's attenuation is known nothing is
 * stated.
 */
final class BandJudge {
  private final List<CoaxBand> bands;
  private final CoaxCables cables;
  private final CoaxSplitters splitters;
  private final ModemLevels levels;

  BandJudge(Tables tables) {
    bands = CoaxBand.all(tables);
    cables = new CoaxCables(tables);
    splitters = new CoaxSplitters(tables);
    levels = new ModemLevels(tables);
  }

  List<Assessment> of(CoaxRun run) {
    List<Assessment> results = new ArrayList<>();
    for (CoaxBand band : bands) {
      Optional<BandLoss> loss = bandLoss(run, band);
      results.add(loss(run, band, loss));
      if (loss.isPresent() && run.outOfUse().isEmpty()) {
        if (band.tilt()) {
          results.add(tilt(run, band, loss.get()));
        }
        if (band.level()) {
          results.add(levels.needed(run, band, loss.get()));
        }
      }
    }
    return results;
  }

  private Optional<BandLoss> bandLoss(CoaxRun run, CoaxBand band) {
    return run.missing().isEmpty()
        ? run.series()
            .map(cables::of)
            .filter(cable -> cable.covers(band.from()) && cable.covers(band.to()))
            .map(cable -> BandLoss.of(run, cable, band))
        : Optional.empty();
  }

  private Assessment loss(CoaxRun run, CoaxBand band, Optional<BandLoss> known) {
    Assessment.Builder result =
        Assessment.of(run.id(), "coax.use." + band.topic(), band.asked("coax.asked.loss"));
    Optional<Phrase> outOfUse = run.outOfUse();
    if (outOfUse.isPresent()) {
      return result.limitedBy(outOfUse.get()).verdict(Verdict.BEYOND, band.source());
    }
    run.assumptions().forEach(result::assuming);
    if (known.isEmpty()) {
      return result.notStated(missing(run, band), band.source());
    }
    BandLoss loss = known.get();
    notes(run, band, loss).forEach(result::assuming);
    return result
        .value(loss.high())
        .limitedBy(
            Phrase.of(
                "coax.band.edges",
                "lowLoss",
                loss.low(),
                "from",
                band.from(),
                "highLoss",
                loss.high(),
                "to",
                band.to()))
        .verdict(Verdict.INFORMATION, loss.source().and(band.source()));
  }

  private Assessment tilt(CoaxRun run, CoaxBand band, BandLoss loss) {
    return Assessment.of(run.id(), "coax.tilt." + band.topic(), band.asked("coax.asked.tilt"))
        .value(loss.tilt())
        .verdict(Verdict.INFORMATION, loss.source().and(band.source()));
  }

  private List<Phrase> missing(CoaxRun run, CoaxBand band) {
    List<Phrase> missing = new ArrayList<>(run.missing());
    if (run.series().isEmpty()) {
      missing.add(Phrase.of("coax.missing.series"));
    } else {
      CoaxCable cable = cables.of(run.series().get());
      for (Frequency edge : List.of(band.from(), band.to())) {
        if (!cable.covers(edge)) {
          missing.add(
              Phrase.of(
                  "coax.missing.attenuation",
                  "frequency",
                  edge,
                  "from",
                  cable.from(),
                  "to",
                  cable.to()));
        }
      }
    }
    return missing;
  }

  private List<Phrase> notes(CoaxRun run, CoaxBand band, BandLoss loss) {
    List<Phrase> notes = new ArrayList<>(loss.notes());
    CoaxSeries series = run.series().orElseThrow();
    Length length = run.length().orElseThrow();
    cables
        .lookAlike(series)
        .map(
            solid ->
                Phrase.of(
                    "coax.assume.print",
                    "loss",
                    solid.attenuation().over(length),
                    "frequency",
                    solid.frequency()))
        .ifPresent(notes::add);
    if (band.split()) {
      List<Phrase> behind = new ArrayList<>();
      for (Count ways : splitters.sizes()) {
        Decibels split = splitters.nominalLoss(ways).orElseThrow();
        behind.add(Phrase.of("coax.band.behind", "ways", ways, "loss", loss.high().plus(split)));
      }
      notes.add(Phrase.of("coax.assume.behind-splitter", "losses", Clauses.joined(behind)));
    }
    band.notes().forEach(note -> notes.add(Phrase.of("coax.note." + note)));
    return notes;
  }
}
