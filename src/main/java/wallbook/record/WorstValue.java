package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;

/** Worst value of one measured quantity of a test summary. */
public record WorstValue(
    Origin origin,
    @Says("Measured quantity.") PairParameter parameter,
    @Says(value = "Pair or pair combination.", example = "36-45") Optional<String> pair,
    @Says(value = "Where the worst value was found.", example = "221 MHz")
        Optional<Frequency> frequency,
    @Says(value = "The value itself.", example = "34.8 dB") Optional<Decibels> value,
    @Says(value = "Distance to the limit, positive when inside.", example = "4.6 dB")
        Optional<Decibels> margin) {}
