package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Diameter;
import wallbook.quantity.Factor;
import wallbook.quantity.Force;
import wallbook.quantity.LinearMass;
import wallbook.record.Cable;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * Cables pulled together in one pull.
 *
 * @param name {@code contents}, or the id of the one cable type
 * @param cables at least one
 */
record PullGroup(String name, Phrase words, List<Cable> cables) {
  PullGroup {
    cables = List.copyOf(cables);
  }

  /** Limit of the group, which cable sets it, and where the figure comes from. */
  record Limit(Force tension, Cable weakest, Source source) {}

  /** What the record lacks to compute the pull of these cables. */
  List<Phrase> missing(PullLimits limits, Optional<Bore> bore) {
    List<Phrase> missing = new ArrayList<>();
    for (Cable cable : cables) {
      if (cable.weight().isEmpty()) {
        missing.add(Phrase.of("conduit.missing.weight", "cable", cable.name()));
      }
      if (cables.size() > 1 && ConduitCase.diameter(cable).isEmpty()) {
        missing.add(ConduitCase.missingDiameter(cable));
      }
      if (limits.of(cable).isEmpty()) {
        missing.add(Phrase.of("conduit.missing.tension", "cable", cable.name()));
      }
    }
    if (cables.size() > 1 && bore.isEmpty()) {
      missing.add(Phrase.of("conduit.missing.bore-for-weight"));
    }
    return missing.stream().distinct().toList();
  }

  LinearMass weight() {
    return cables.stream()
        .flatMap(cable -> cable.weight().stream())
        .reduce(LinearMass.kilogramsPerMetre(0), LinearMass::plus);
  }

  List<Diameter> diameters() {
    return cables.stream().flatMap(cable -> ConduitCase.diameter(cable).stream()).toList();
  }

  Factor correction(WeightCorrection corrections, Optional<Bore> bore) {
    return cables.size() == 1
        ? Factor.of(1)
        : corrections.of(diameters(), bore.orElseThrow().diameter());
  }

  /**
   * Limit of the group: that of its one cable; of several the share {@code share · n · least}, as
   * though all bore the same and the weakest decided.
   */
  Limit limit(PullLimits limits, double share) {
    Cable weakest =
        cables.stream()
            .min(Comparator.comparing(cable -> limits.of(cable).orElseThrow().tension()))
            .orElseThrow();
    PullLimits.Limit least = limits.of(weakest).orElseThrow();
    double cablesShare = cables.size() == 1 ? 1 : share * cables.size();
    return new Limit(least.tension().times(cablesShare), weakest, least.source());
  }
}
