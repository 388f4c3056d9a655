package wallbook.assess.fibre;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** States the loss of a link: the worst of its latest test, or the budget of each edition. */
final class LinkLosses {
  private final List<LossEdition> editions;
  private final TestMethods methods;

  LinkLosses(Tables tables) {
    methods = new TestMethods(tables);
    editions = LossEdition.limits(tables);
  }

  /** The editions that set limits, the headlining one first. */
  List<LossEdition> editions() {
    return editions;
  }

  /**
   * Worst reading of the link's latest test at the wavelength, whatever fibre and direction; empty
   * if there is none or a reading of that test is below zero, which no passive link can be.
   */
  Optional<Reading> measured(FibreLink link, Wavelength wavelength) {
    List<Reading> latest = latest(link, wavelength);
    return latest.stream().anyMatch(LinkLosses::isImpossible)
        ? Optional.empty()
        : latest.stream().max(Comparator.comparing(reading -> reading.loss().loss()));
  }

  /** All readings of the latest test with a reading at the wavelength. */
  List<Reading> latest(FibreLink link, Wavelength wavelength) {
    List<Reading> at = all(link, wavelength);
    return at.stream()
        .map(Reading::test)
        .reduce((earlier, later) -> later.date().isBefore(earlier.date()) ? earlier : later)
        .map(test -> at.stream().filter(reading -> reading.test().equals(test)).toList())
        .orElse(List.of());
  }

  /** Every reading of a link of known class at the wavelength, whatever its test. */
  List<Reading> all(FibreLink link, Wavelength wavelength) {
    boolean singleMode = link.fibreClass().orElseThrow().isSingleMode();
    return link.readings().stream()
        .filter(reading -> methods.serves(reading, wavelength, singleMode))
        .toList();
  }

  static boolean isImpossible(Reading reading) {
    return reading.loss().loss().inDecibels() < 0;
  }

  /**
   * The loss of a link, stated in one or more ways; empty if it can be stated in none for want of a
   * length.
   */
  List<LossCandidate> of(FibreLink link, FibreClass fibreClass, Wavelength wavelength) {
    Optional<Reading> measured = measured(link, wavelength);
    if (measured.isPresent()) {
      Reading reading = measured.get();
      Phrase by = Phrase.of("fibre.by-test", "date", reading.test().date());
      return List.of(
          new LossCandidate(
              by,
              reading.loss().loss(),
              editions.get(0).attenuation(fibreClass, wavelength).orElseThrow(),
              methods.source(fibreClass.isSingleMode())));
    }
    return editions.stream()
        .flatMap(edition -> budgeted(edition, link, fibreClass, wavelength).stream())
        .toList();
  }

  private static Optional<LossCandidate> budgeted(
      LossEdition edition, FibreLink link, FibreClass fibreClass, Wavelength wavelength) {
    Optional<Decibels> loss =
        link.length()
            .flatMap(length -> edition.budget(fibreClass, wavelength, length, link.joints()));
    return loss.map(
        decibels ->
            new LossCandidate(
                edition.name(),
                decibels,
                edition.attenuation(fibreClass, wavelength).orElseThrow(),
                edition.source(fibreClass, wavelength)));
  }
}
