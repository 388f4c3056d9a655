package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * The loss that a link may have by each edition, the loss that a sound one usually shows, and the
 * round-trip time of a light pulse, at every test wavelength of its kind of fibre. Nothing here is
 * a verdict.
 */
final class BudgetReport {
  /** A round number of the reflectometer's time axis, for reading lengths off it. */
  private static final Delay STEP = Delay.nanoseconds(100);

  private final List<LossEdition> editions;
  private final LossEdition design;
  private final TestMethods methods;
  private final Reflectometry reflectometry;

  BudgetReport(Tables tables) {
    editions = LossEdition.limits(tables);
    design = LossEdition.design(tables);
    methods = new TestMethods(tables);
    reflectometry = new Reflectometry(tables);
  }

  List<Assessment> of(FibreLink link) {
    if (link.fibreClass().isEmpty()) {
      return List.of();
    }
    FibreClass fibreClass = link.fibreClass().get();
    List<Assessment> reports = new ArrayList<>();
    for (Wavelength wavelength : methods.wavelengths(fibreClass.isSingleMode())) {
      String at = "." + Math.round(wavelength.inNanometres());
      for (LossEdition edition : editions) {
        Phrase asked =
            Phrase.of("fibre.asked.budget", "wavelength", wavelength, "edition", edition.name());
        reports.add(
            loss(link, "fibre.budget" + at + "." + edition.key(), asked, edition, wavelength));
      }
      Phrase expected =
          Phrase.of("fibre.asked.expected", "wavelength", wavelength, "edition", design.name());
      reports.add(loss(link, "fibre.expected" + at, expected, design, wavelength));
    }
    return reports;
  }

  /** Round-trip times; asked of damaged runs too, for that is how the break is found. */
  List<Assessment> roundTrips(FibreLink link) {
    return link.fibreClass().stream()
        .flatMap(
            c ->
                methods.wavelengths(c.isSingleMode()).stream()
                    .map(wavelength -> roundTrip(link, c.isSingleMode(), wavelength)))
        .toList();
  }

  private Assessment loss(
      FibreLink link, String topic, Phrase asked, LossEdition edition, Wavelength wavelength) {
    FibreClass fibreClass = link.fibreClass().orElseThrow();
    Assessment.Builder result = Assessment.of(link.id(), topic, asked);
    link.assume(result);
    Source source = edition.source(fibreClass, wavelength);
    Optional<Length> length = link.length();
    if (length.isEmpty()) {
      return result.notStated(List.of(Phrase.of("fibre.missing.length")), source);
    }
    Decibels joints = edition.joints(fibreClass, link.joints());
    Decibels whole =
        edition.budget(fibreClass, wavelength, length.get(), link.joints()).orElseThrow();
    return result
        .value(whole)
        .limitedBy(Phrase.of("fibre.budget.parts", "fibre", whole.minus(joints), "joints", joints))
        .verdict(Verdict.INFORMATION, source);
  }

  private Assessment roundTrip(FibreLink link, boolean singleMode, Wavelength wavelength) {
    Assessment.Builder result =
        Assessment.of(
            link.id(),
            "fibre.otdr." + Math.round(wavelength.inNanometres()),
            Phrase.of("fibre.asked.otdr", "wavelength", wavelength));
    Source source = reflectometry.source(singleMode, wavelength);
    if (link.length().isEmpty()) {
      return result.notStated(List.of(Phrase.of("fibre.missing.length")), source);
    }
    Delay time = reflectometry.roundTrip(link.length().get(), singleMode, wavelength).orElseThrow();
    Length perStep = reflectometry.length(STEP, singleMode, wavelength).orElseThrow();
    return result
        .value(time)
        .assuming(Phrase.of("fibre.assume.otdr-scale", "time", STEP, "length", perStep))
        .verdict(Verdict.INFORMATION, source);
  }
}
