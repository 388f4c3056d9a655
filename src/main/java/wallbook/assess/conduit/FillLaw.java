package wallbook.assess.conduit;

import java.util.List;
import wallbook.record.Medium;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * For which circuits the fill of NEC chapter 9 table 1 is law, and for which it is only shown; from
 * the reference table {@code conduit-fill-law}. What a reader is told is the strictest reading of
 * the cables together; nothing here decides what an authority will ask for.
 */
final class FillLaw {
  private final Table circuits;

  FillLaw(Tables tables) {
    this.circuits = tables.table("conduit-fill-law");
  }

  /** How the table stands to what lies in a conduit. */
  record Reading(Phrase words, Source source) {}

  Reading of(ConduitCase conduit) {
    List<String> present = conduit.contents().stream().map(FillLaw::circuit).distinct().toList();
    if (Bores.isMadeToIec(conduit.conduit().type())) {
      return reading("conduit.law.elsewhere", List.of("communications"));
    } else if (present.isEmpty()) {
      return reading("conduit.law.empty", List.of("communications", "class-2"));
    } else if (present.contains("class-2")) {
      return reading("conduit.law.class-2", List.of("class-2"));
    } else if (present.contains("fibre")) {
      return reading("conduit.law.exempt-with-fibre", present);
    }
    return reading("conduit.law.exempt", present);
  }

  private Reading reading(String words, List<String> rows) {
    Source source =
        rows.stream().map(circuits::row).map(Row::source).reduce(Source::and).orElseThrow();
    return new Reading(Phrase.of(words), source);
  }

  /** A run that supplies something is a class 2 circuit whatever cable it uses. */
  private static String circuit(ConduitCase.Content content) {
    if (content.run().feed().isPresent()) {
      return "class-2";
    }
    Medium medium = content.cable().medium();
    return switch (medium) {
      case BALANCED_PAIR -> "communications";
      case COAX -> "coax";
      case FIBRE -> "fibre";
      case SPEAKER, CONTROL, POWER -> "class-2";
    };
  }
}
