package wallbook.stock;

/**
 * A size that type on labels may be set in.
 *
 * @param pt in points of 1/72 inch
 * @param usual whether it is comfortable, and so tried before the others
 */
public record TypeSize(double pt, boolean usual) {}
