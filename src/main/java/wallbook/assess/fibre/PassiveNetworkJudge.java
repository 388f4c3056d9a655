package wallbook.assess.fibre;

import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Clauses;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * What a single-mode run in the house takes of the path loss of each class of passive optical
 * network, and what is left for the provider's plant. The provider owns the whole path, so a run is
 * never more than conditionally within; one that loses more than the whole path may is beyond.
 */
final class PassiveNetworkJudge {
  private final List<PassiveNetworkClass> classes;
  private final OpticalSplitters splitters;
  private final LinkLosses losses;
  private final Wavelength window;

  PassiveNetworkJudge(Tables tables, LinkLosses losses) {
    classes = classes(tables);
    splitters = new OpticalSplitters(tables);
    this.losses = losses;
    // The light goes both ways at several wavelengths; single-mode fibre loses most at the
    // shortest.
    window = new TestMethods(tables).wavelengths(true).get(0);
  }

  /** The classes of the reference table, in its order. */
  static List<PassiveNetworkClass> classes(Tables tables) {
    return tables.table("passive-optical-networks").rows().stream()
        .map(PassiveNetworkClass::of)
        .toList();
  }

  /** One assessment for each class of network; none for a multimode run. */
  List<Assessment> of(FibreLink link) {
    return link.fibreClass()
        .filter(FibreClass::isSingleMode)
        .map(fibreClass -> classes.stream().map(c -> judge(link, fibreClass, c)).toList())
        .orElse(List.of());
  }

  private Assessment judge(FibreLink link, FibreClass fibreClass, PassiveNetworkClass network) {
    Assessment.Builder result =
        Assessment.of(
            link.id(), network.topic(), Phrase.of("fibre.asked.pon", "class", network.name()));
    Optional<Phrase> outOfUse = link.outOfUse();
    if (outOfUse.isPresent()) {
      return result.limitedBy(outOfUse.get()).verdict(Verdict.BEYOND, network.source());
    }
    link.assume(result);
    List<LossCandidate> stated = losses.of(link, fibreClass, window);
    if (stated.isEmpty()) {
      return result.notStated(List.of(Phrase.of("fibre.missing.length")), network.source());
    }
    LossCandidate house = stated.get(0);
    LimitCheck check =
        LimitCheck.loss(house.loss(), network.mostLoss(), network.source().and(house.source()));
    result.assuming(Phrase.of("fibre.assume.loss", "by", house.by()));
    result.onlyIf(Phrase.of("fibre.assume.provider-owns"));
    result.assuming(
        Phrase.of(
            "fibre.assume.pon-levels",
            "launch",
            network.leastLaunch(),
            "strongest",
            network.mostLaunch(),
            "sensitivity",
            network.sensitivity(),
            "overload",
            network.overload(),
            "penalty",
            network.penalty()));
    return result
        .value(check.value())
        .limit(check.limit(), check.margin())
        .limitedBy(check.holds() ? left(network, house.loss()) : check.words())
        .verdict(check.holds() ? Verdict.CONDITIONAL : Verdict.BEYOND, check.source());
  }

  private Phrase left(PassiveNetworkClass network, Decibels house) {
    PassiveNetworkClass.Remaining plant = network.after(house);
    Phrase words =
        plant.least().inDecibels() > 0
            ? Phrase.of("fibre.pon.left", "most", plant.most(), "least", plant.least())
            : Phrase.of("fibre.pon.left-any", "most", plant.most());
    return splitters
        .largestWithin(plant.most())
        .map(
            ways ->
                Phrase.of(
                    "fibre.pon.splitter",
                    "ways",
                    ways,
                    "loss",
                    splitters.mostLoss(ways).orElseThrow(),
                    "ideal",
                    OpticalSplitters.idealLoss(ways)))
        .map(splitter -> Clauses.joined(List.of(words, splitter)))
        .orElse(words);
  }
}
