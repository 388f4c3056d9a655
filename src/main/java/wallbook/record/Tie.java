package wallbook.record;

import wallbook.quantity.Length;

/** A horizontal distance from a fixed corner. */
public record Tie(
    Origin origin,
    @Says(value = "Corner measured from.", example = "ne") @RefersTo(Kind.CORNER) String from,
    @Says(value = "Horizontal distance to the place.", example = "31 ft 6 in") Length distance) {}
