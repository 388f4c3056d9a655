package wallbook.assess.fibre;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * One edition's figures for the loss of cabled fibre, connectors and splices. Editions differ (3.0
 * or 3.5 dB/km at 850 nm) and are never mixed within one budget.
 */
public final class LossEdition {
  private static final String ATTENUATION = "fibre-attenuation";
  private static final String JOINTS = "fibre-joints";

  private final String key;
  private final Table attenuation;
  private final Table joints;

  private LossEdition(Tables tables, String key) {
    this.key = key;
    this.attenuation = tables.table(ATTENUATION);
    this.joints = tables.table(JOINTS);
  }

  /** The editions that links are judged by, the one that headlines a result first. */
  public static List<LossEdition> limits(Tables tables) {
    return tables.table(JOINTS).rows().stream()
        .filter(row -> row.yes("limit"))
        .map(row -> row.text("edition"))
        .distinct()
        .map(key -> new LossEdition(tables, key))
        .toList();
  }

  /** Typical values for design: what a sound link measures, never a limit. */
  public static LossEdition design(Tables tables) {
    return new LossEdition(tables, "design");
  }

  /** Short name of the edition, as in the tables: {@code tia}, {@code iso}, {@code design}. */
  public String key() {
    return key;
  }

  /** The edition's name for a reader. */
  public Phrase name() {
    return Phrase.of("fibre.edition." + key);
  }

  /** Attenuation of cabled fibre; empty at a wavelength for which the edition says nothing. */
  public Optional<LinearAttenuation> attenuation(FibreClass fibreClass, Wavelength wavelength) {
    return row(fibreClass, wavelength)
        .map(row -> row.number("attenuation_db_per_km"))
        .map(LinearAttenuation::decibelsPerKilometre);
  }

  /** Loss of one mated connector pair. */
  public Decibels connector(FibreClass fibreClass) {
    return Decibels.decibels(joint(fibreClass).number("connector_db"));
  }

  /** Loss of one splice. */
  public Decibels splice(FibreClass fibreClass) {
    return Decibels.decibels(joint(fibreClass).number("splice_db"));
  }

  /** Loss of all joints of a link. */
  public Decibels joints(FibreClass fibreClass, Joints of) {
    return of.loss(connector(fibreClass), splice(fibreClass));
  }

  /** Loss of a link by {@link LinkLoss}; empty where the attenuation is. */
  public Optional<Decibels> budget(
      FibreClass fibreClass, Wavelength wavelength, Length length, Joints of) {
    return attenuation(fibreClass, wavelength)
        .map(a -> LinkLoss.of(length, a, of, connector(fibreClass), splice(fibreClass)));
  }

  /** Source of a budget at a wavelength for which the edition has an attenuation. */
  public Source source(FibreClass fibreClass, Wavelength wavelength) {
    return row(fibreClass, wavelength).orElseThrow().source().and(joint(fibreClass).source());
  }

  private Optional<Row> row(FibreClass fibreClass, Wavelength wavelength) {
    return attenuation.find(
        key, fibreClass.name(), Long.toString(Math.round(wavelength.inNanometres())));
  }

  private Row joint(FibreClass fibreClass) {
    return joints.row(key, fibreClass.isSingleMode() ? "single-mode" : "multimode");
  }
}
