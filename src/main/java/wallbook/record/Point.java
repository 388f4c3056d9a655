package wallbook.record;

import wallbook.quantity.Length;

/**
 * A point on a floor's plan, written {@code [12 ft, 6 ft 2 in]}: x to the right of the page, y up
 * it, both from an origin that all floors share.
 */
public record Point(Length x, Length y) {}
