package wallbook.record;

import wallbook.quantity.Frequency;

/**
 * One measured point of a sweep.
 *
 * @param frequency where it was measured
 * @param parameter what was measured
 * @param pair pair ({@code 36}) or pair combination ({@code 36-45})
 * @param valueInDecibels what was read, in decibels; losses and ratios alike positive
 * @param direction end the measurement was made from
 */
public record SweepPoint(
    Frequency frequency,
    PairParameter parameter,
    String pair,
    double valueInDecibels,
    LossDirection direction) {}
