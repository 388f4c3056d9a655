package wallbook.record;

import java.util.Optional;

/** One end of a conduit: at a place, a head, or open in a space. */
@OneOf({"place", "head", "space"})
public record ConduitEnd(
    Origin origin,
    @Says(value = "Place where it ends.", example = "d-tv-conduit") @RefersTo(Kind.PLACE)
        Optional<String> place,
    @Says(value = "Head where it ends.", example = "rack") @RefersTo(Kind.HEAD)
        Optional<String> head,
    @Says(value = "Space where it ends open.", example = "attic") @RefersTo(Kind.SPACE)
        Optional<String> space,
    @Says("Anything a later reader should know.") Optional<String> note) {}
