package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;

/**
 * One piece of a conduit's path in order from its from-end: a straight length, a bend or a pull
 * box.
 */
@OneOf({"straight", "bend", "pull_box"})
public record PathPiece(
    Origin origin,
    @Says(value = "A straight length.", example = "20 ft") Optional<Length> straight,
    @Says(value = "A bend by its angle.", example = "90 deg") Optional<Angle> bend,
    @Says(value = "Radius of the bend to the conduit's centre line.", example = "6 in")
        Optional<Length> radius,
    @Says(value = "Slope of a straight length, upward positive.", example = "0 deg")
        Optional<Angle> rise,
    @Says(value = "A pull box, by name or place.", example = "PB-1") Optional<String> pullBox) {}
