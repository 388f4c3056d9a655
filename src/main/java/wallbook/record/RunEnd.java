package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Length;

/** One end of a run: at a place, or at a port of a head's panel. */
@OneOf({"place", "head"})
public record RunEnd(
    Origin origin,
    @Says(value = "Place where the run ends.", example = "k-tv") @RefersTo(Kind.PLACE)
        Optional<String> place,
    @Says(value = "Which jack of the place.", example = "1") Optional<String> jack,
    @Says(value = "Head where the run ends.", example = "rack") @RefersTo(Kind.HEAD)
        Optional<String> head,
    @Says(value = "Panel of the head.", example = "P1") Optional<String> panel,
    @Says(value = "Port of the panel, from 1.", example = "7") Optional<Integer> port,
    @Says(value = "Cable left at this end.", example = "3 ft") Optional<Length> slack,
    @Says("How the end was left.") Finish finish,
    @Says("What it is terminated in.") Optional<Connector> connector,
    @Says("Order of the pairs.") Optional<WiringScheme> wiring) {
  /** Whether the end is terminated, so that something can be plugged in. */
  public boolean isTerminated() {
    return finish == Finish.TERMINATED;
  }
}
