package wallbook.assess.lowvoltage;

import java.util.List;
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
    List<Optional<Voltage>> each =
        Stream.concat(current.stream().map(line::atLoad), power.stream().map(line::atLoad))
            .toList();
    return each.contains(Optional.<Voltage>empty())
        ? Optional.empty()
        : each.stream().flatMap(Optional::stream).min(Voltage::compareTo);
  }

  /** Current drawn over the line; empty if it is not stated and the line cannot bring the power. */
  Optional<Current> over(DcLine line) {
    Optional<Current> byPower =
        power.flatMap(p -> line.atLoad(p).map(v -> Current.amperes(p.inWatts() / v.inVolts())));
    return Stream.of(current, byPower).flatMap(Optional::stream).max(Current::compareTo);
  }

  /** Largest current drawn while a share of the supply is lost on the way. */
  Current whenLost(Voltage supply, Ratio share) {
    return Stream.of(current, power.map(p -> DcLine.currentAt(supply, p, share)))
        .flatMap(Optional::stream)
        .max(Current::compareTo)
        .orElseThrow();
  }
}
