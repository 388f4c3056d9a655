package wallbook.assess.copper;

import wallbook.quantity.Decibels;
import wallbook.reference.Source;

/**
 * A published limit at one frequency.
 *
 * @param value greatest insertion loss, or least crosstalk or return loss
 */
public record Limit(Decibels value, Source source) {}
