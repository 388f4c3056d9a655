package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;
import wallbook.quantity.Temperature;

/** One cable from end to end. */
public record Run(
    Origin origin,
    @Says(value = "Name for references.", example = "r-k-tv-1") @Id(Kind.RUN) String id,
    @Says(value = "What is printed on both ends of the cable.", example = "K-01") String label,
    @Says(value = "Cable type: one of the record's or of the built-in catalogue.", example = "cat6")
        @RefersTo(Kind.CABLE)
        String cable,
    @Says("The end at home, usually at a head.") RunEnd from,
    @Says("The far end, usually at a place.") RunEnd to,
    @Says(value = "Length of the cable between its ends, slack included.", example = "118 ft")
        Optional<Length> length,
    @Says("How the length was found.") Optional<LengthMethod> lengthBy,
    @Says("State at handover.") RunCondition condition,
    @Says("Why a dark run is dark.") Optional<String> darkReason,
    @Says(value = "System it belongs to.", example = "network") @RefersTo(Kind.SYSTEM)
        Optional<String> system,
    @Says(value = "What it serves, in a few words.", example = "left rear speaker")
        Optional<String> serves,
    @Says("Conduits it passes through, from the from-end.") @RefersTo(Kind.CONDUIT)
        List<String> conduits,
    @Says("What it passes through.") List<RunEnvironment> environments,
    @Says("Rating marked on this cable, if not that of its type.") Optional<Jacket> jacket,
    @Says(value = "Highest temperature expected along it.", example = "45 °C")
        Optional<Temperature> hottest,
    @Says(value = "Cables in the largest bundle it lies in.", example = "12")
        Optional<Integer> bundle,
    @Says("What it supplies, for a low-voltage supply.") Optional<Feed> feed,
    @Says("Run that stands in for this damaged one.") @RefersTo(Kind.RUN) Optional<String> standIn,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public Run {
    conduits = List.copyOf(conduits);
    environments = List.copyOf(environments);
  }

  /** The end that the given one, which must be one of its own, is not. */
  @SuppressWarnings("ReferenceEquality") // Both ends may be described alike.
  public RunEnd otherThan(RunEnd end) {
    return end == from ? to : from;
  }

  /** Whether both ends are terminated. */
  public boolean isTerminated() {
    return from.isTerminated() && to.isTerminated();
  }
}
