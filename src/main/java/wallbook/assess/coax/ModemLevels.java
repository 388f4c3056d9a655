package wallbook.assess.coax;

import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.SignalLevel;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Signal that must arrive at the start of a run for a cable modem at its end. */
final class ModemLevels {
  private final Row modem;

  ModemLevels(Tables tables) {
    modem = tables.table("coax-levels").row("cable-modem");
  }

  /** Least level at the start of the run, at the band's upper edge, where it loses most. */
  Assessment needed(CoaxRun run, CoaxBand band, BandLoss loss) {
    return Assessment.of(run.id(), "coax.level." + band.topic(), band.asked("coax.asked.level"))
        .value(level("least_dbmv").before(loss.high()))
        .limitedBy(
            Phrase.of(
                "coax.band.level",
                "aimLeast",
                level("aim_least_dbmv").before(loss.high()),
                "aimMost",
                level("aim_most_dbmv").before(loss.high()),
                "least",
                level("least_dbmv"),
                "most",
                level("most_dbmv")))
        .verdict(Verdict.INFORMATION, modem.source().and(loss.source()));
  }

  private SignalLevel level(String column) {
    return SignalLevel.dbmv(modem.number(column));
  }
}
