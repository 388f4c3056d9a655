package wallbook.assess.fibre;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.record.FibreClass;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Holds a link against an optical application: class of fibre, number of fibres, length against
 * reach and loss against the channel's limit must all hold. The result carries the quantity that
 * decides: the first that fails, else the one with the least margin as a share of its limit.
 */
final class ApplicationJudge {
  private final LinkLosses losses;
  private final FibreCores cores;
  private final ApplicationNotes notes;
  private final Length usualCords;

  ApplicationJudge(Tables tables, LinkLosses losses, Length usualCords) {
    this.losses = losses;
    this.usualCords = usualCords;
    cores = new FibreCores(tables);
    notes = new ApplicationNotes(tables);
  }

  Assessment judge(FibreLink link, OpticalApplication application) {
    Assessment.Builder result =
        Assessment.of(
            link.id(),
            application.topic(),
            Phrase.of(
                "fibre.asked.application",
                "application",
                application.name(),
                "rate",
                application.rate(),
                "fibres",
                application.fibres()));
    Optional<Phrase> outOfUse = link.outOfUse();
    if (outOfUse.isPresent()) {
      return result.limitedBy(outOfUse.get()).verdict(Verdict.BEYOND, application.source());
    }
    if (link.fibreClass().isEmpty()) {
      return result.notStated(List.of(Phrase.of("fibre.missing.class")), application.source());
    }
    FibreClass fibreClass = link.fibreClass().get();
    Optional<OpticalReach> reach = application.on(fibreClass);
    if (reach.isEmpty()) {
      return result
          .limitedBy(otherClass(application, fibreClass))
          .verdict(Verdict.BEYOND, application.source());
    }
    return new ApplicationCase(
            link,
            fibreClass,
            application,
            reach.get(),
            losses.of(link, fibreClass, reach.get().wavelength()),
            losses.measured(link, reach.get().wavelength()).map(Reading::test),
            usualCords,
            notes)
        .judge(result);
  }

  private Phrase otherClass(OpticalApplication application, FibreClass fibreClass) {
    boolean singleMode = fibreClass.isSingleMode();
    Optional<FibreClass> least =
        application.reaches().keySet().stream()
            .filter(c -> c.isSingleMode() == singleMode)
            .min(Comparator.naturalOrder());
    String name = cores.name(fibreClass);
    return least
        .map(c -> Phrase.of("fibre.limit.needs-class", "class", name, "least", cores.name(c)))
        .orElseGet(
            () ->
                Phrase.of(
                    singleMode ? "fibre.limit.needs-multimode" : "fibre.limit.needs-single-mode",
                    "class",
                    name));
  }
}
