package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.record.FibreClass;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** What is to be said beside the verdict on an application. */
final class ApplicationNotes {
  private final Table legacy;
  private final Table classes;
  private final LossEdition headline;

  ApplicationNotes(Tables tables) {
    legacy = tables.table("optical-reaches-legacy");
    classes = tables.table("fibre-classes");
    headline = LossEdition.limits(tables).get(0);
  }

  /** Reserves of a link that carries an application. */
  List<Phrase> of(FibreLink link, OpticalApplication application, FibreClass fibreClass) {
    List<Phrase> notes = new ArrayList<>();
    legacy(application, fibreClass).ifPresent(notes::add);
    int links = link.fibres().orElse(0) / application.fibres().number();
    if (links > 1) {
      notes.add(Phrase.of("fibre.assume.links", "links", links));
    }
    return notes;
  }

  /**
   * Why the loss fails at a length within reach: the joints alone lose more than the standard
   * allots to them.
   */
  Optional<Phrase> joints(FibreLink link, FibreClass fibreClass, OpticalReach reach) {
    Decibels joints = headline.joints(fibreClass, link.joints());
    return reach
        .connections()
        .filter(allotted -> joints.compareTo(allotted) > 0)
        .map(
            allotted ->
                Phrase.of(
                    "fibre.limit.joints",
                    "joints",
                    joints,
                    "allotted",
                    allotted,
                    "attenuation",
                    reach.attenuation().orElseThrow()));
  }

  private Optional<Phrase> legacy(OpticalApplication application, FibreClass fibreClass) {
    return legacy
        .find(application.name(), fibreClass.name())
        .map(
            row ->
                Phrase.of(
                    "fibre.assume.bandwidth",
                    "class",
                    classes.row(fibreClass.name()).text("name"),
                    "bandwidth",
                    classes.row(fibreClass.name()).text("ofl_850_mhz_km"),
                    "older",
                    row.text("ofl_850_mhz_km"),
                    "reach",
                    Length.metres(row.number("reach_m"))));
  }
}
