package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Length;

/** A door, window or passage in a wall. */
public record Opening(
    Origin origin,
    @Says(value = "Letter of the wall.", example = "A") String wall,
    @Says("Door, window or passage.") OpeningKind kind,
    @Says(
            value =
                "From the left-hand corner, facing the wall from inside, to the opening's left edge.",
            example = "3 ft")
        Length offset,
    @Says(value = "Width of the opening.", example = "36 in") Length width,
    @Says(value = "Height of its lower edge above finished floor.", example = "0 ft")
        Optional<Length> sill,
    @Says(value = "Height of its upper edge above finished floor.", example = "80 in")
        Optional<Length> head) {}
