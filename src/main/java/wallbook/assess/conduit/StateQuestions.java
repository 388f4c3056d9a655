package wallbook.assess.conduit;

import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Diameter;
import wallbook.record.Job;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** What the bore is and whether it was shown to be clear. */
final class StateQuestions implements Questions {
  private final Bores bores;
  private final Table table;
  private final Source byMaker;
  private final Source practice;

  StateQuestions(Tables tables) {
    this.bores = new Bores(tables);
    this.table = tables.table("conduit-bores-nec");
    this.byMaker = tables.table("conduit-bores-iec").source();
    this.practice = tables.table("pulling-practice").row("proof").source();
  }

  @Override
  public List<Assessment> about(ConduitCase conduit, Job job) {
    return List.of(bore(conduit), clear(conduit));
  }

  private Assessment bore(ConduitCase conduit) {
    Assessment.Builder asked =
        Assessment.of(conduit.id(), "conduit.bore", Phrase.of("conduit.bore.asked"));
    if (conduit.bore().isPresent()) {
      Bore bore = conduit.bore().get();
      return asked
          .value(bore.diameter())
          .assuming(Phrase.of(bore.declared() ? "conduit.bore.declared" : "conduit.bore.by-table"))
          .verdict(Verdict.INFORMATION, bore.source());
    }
    Optional<Diameter> typical = bores.typical(conduit.conduit());
    typical.ifPresent(size -> asked.assuming(Phrase.of("conduit.bore.typical", "bore", size)));
    boolean declaredOnly = Bores.isMadeToIec(conduit.conduit().type());
    return asked.notStated(
        List.of(Phrase.of("conduit.missing.bore", "size", conduit.conduit().tradeSize())),
        declaredOnly ? byMaker : table.source());
  }

  private Assessment clear(ConduitCase conduit) {
    Assessment.Builder asked =
        Assessment.of(conduit.id(), "conduit.clear", Phrase.of("conduit.clear.asked"))
            .limitedBy(conduit.clearance().reason());
    conduit.clearance().provedTo().ifPresent(asked::value);
    return asked.verdict(conduit.clearance().best(), practice);
  }
}
