package wallbook.cli;

import java.util.Optional;
import wallbook.picture.Colour;
import wallbook.record.Job;
import wallbook.record.Look;
import wallbook.record.Party;
import wallbook.record.PartyRole;
import wallbook.reference.Tables;
import wallbook.render.HouseStyle;

/**
 * Makes the look of the documents from what the record says of it. A colour too pale to be read is
 * not used; a finding tells.
 */
final class Looks {
  private Looks() {}

  static HouseStyle of(Job job, Tables tables) {
    double leastContrast = tables.table("document-look").row("accent-contrast").number("ratio");
    Optional<Look> look = job.facts().look();
    return new HouseStyle(
        look.flatMap(Look::accent)
            .flatMap(Colour::parse)
            .filter(colour -> colour.contrast(Colour.WHITE) >= leastContrast)
            .map(colour -> HouseStyle.Accent.of(colour, leastContrast)),
        job.logo(),
        job.facts().parties().stream()
            .filter(party -> party.role() == PartyRole.INTEGRATOR)
            .map(Party::name)
            .findFirst(),
        look.flatMap(Look::footer));
  }
}
