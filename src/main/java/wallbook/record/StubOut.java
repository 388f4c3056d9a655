package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;

/** An exterior end left for later work in the garden. */
public record StubOut(
    Origin origin,
    @Says(value = "Name for references.", example = "so-1") @Id(Kind.STUB_OUT) String id,
    @Says(value = "Place where it comes out.", example = "p-so-1") @RefersTo(Kind.PLACE)
        String place,
    @Says("Conduit it comes out of.") @RefersTo(Kind.CONDUIT) Optional<String> conduit,
    @Says(
            value = "Depth of the top of the cable or conduit below finished grade.",
            example = "12 in")
        Optional<Length> cover,
    @Says("What is coiled there.") List<Coil> coiled,
    @Says("Zone it is meant for.") @RefersTo(Kind.ZONE) Optional<String> zone,
    @Says("What stands in the way: paving, footing.") List<String> obstacles,
    @Says("Buried line still to be laid.") Optional<String> lineStillToLay,
    @Says("Who lays it.") Optional<PartyRole> lineBy,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public StubOut {
    coiled = List.copyOf(coiled);
    obstacles = List.copyOf(obstacles);
  }
}
