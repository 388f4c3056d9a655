package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;

/** A conduit or chase. */
public record Conduit(
    Origin origin,
    @Says(value = "Name for references.", example = "c-demarc") @Id(Kind.CONDUIT) String id,
    @Says(value = "What is printed on both ends.", example = "C-02") String label,
    @Says(value = "Name as printed.", example = "Spare conduit to the demarcation") String name,
    @Says("Family.") ConduitType type,
    @Says(value = "Trade size or metric designator of the family.", example = "1-1/4")
        String tradeSize,
    @Says(
            value = "Inside diameter, measured or declared by the maker; overrides the table.",
            example = "34 mm")
        Optional<Length> bore,
    @Says("One end.") ConduitEnd from,
    @Says("The other end.") ConduitEnd to,
    @Says(value = "Length from end to end.", example = "62 ft") Optional<Length> length,
    @Says("Straights, bends and pull boxes in order from the from-end.") List<PathPiece> path,
    @Says("Runs that lie in it.") @RefersTo(Kind.RUN) List<String> contents,
    @Says("Whether a pull string lies in it.") PullString pullString,
    @Says("How it was shown to be clear; left out if it never was.") Optional<Proof> proved,
    @Says("State at handover.") ConduitCondition condition,
    @Says("Whether it was laid for later use.") Optional<Boolean> spare,
    @Says("What it was laid for.") Optional<String> purpose,
    @Says("Where it passes a fire-rated assembly and how that was sealed.")
        Optional<String> firestop,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public Conduit {
    path = List.copyOf(path);
    contents = List.copyOf(contents);
  }

  /** The end that the given one, which must be one of its own, is not. */
  @SuppressWarnings("ReferenceEquality") // Both ends may be described alike.
  public ConduitEnd otherThan(ConduitEnd end) {
    return end == from ? to : from;
  }
}
