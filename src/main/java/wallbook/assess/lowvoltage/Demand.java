package wallbook.assess.lowvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import wallbook.quantity.Current;
import wallbook.quantity.Power;
import wallbook.quantity.Ratio;
import wallbook.quantity.Voltage;
import wallbook.record.Feed;

/**
 * What the load of a feed draws: a current, a power or both, each above zero. Of both the one that
 * asks more of the wire counts.
 */
record Demand(Optional<Current> current, Optional<Power> power) {

  /** The demand of a feed; empty if the record states neither. */
  static Optional<Demand> of(Feed feed) {
    Demand demand =
        new Demand(
            feed.current().filter(i -> i.inAmperes() > 0),
            feed.power().filter(p -> p.inWatts() > 0));
    return Optional.of(demand).filter(d -> d.current.isPresent() || d.power.isPresent());
  }

  /** Voltage that the line leaves at the load; empty if it cannot bring what the load draws. */
  Optional<Voltage> leaves(DcLine line) {
    Optional<Optional<Voltage>> byCurrent = current.map(line::atLoad);
    Optional<Optional<Voltage>> byPower = power.map(line::atLoad);
    if (byCurrent
        .filter(Optional::isEmpty)
        .or(() -> byPower.filter(Optional::isEmpty))
        .isPresent()) {
      return Optional.empty();
    }
    return Stream.of(byCurrent, byPower)
        .flatMap(Optional::stream)
        .flatMap(Optional::stream)
        .min(Voltage::compareTo);
  }

  /** Largest current drawn while a share of the supply is lost on the way. */
  Current whenLost(Voltage supply, Ratio share) {
    return Stream.of(current, power.map(p -> DcLine.currentAt(supply, p, share)))
        .flatMap(Optional::stream)
        .max(Current::compareTo)
        .orElseThrow();
  }
}
