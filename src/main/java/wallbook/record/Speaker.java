package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;

/** A speaker position fed by a zone. */
public record Speaker(
    Origin origin,
    @Says("Where it is.") @RefersTo(Kind.PLACE) Optional<String> place,
    @Says("Run that feeds it.") @RefersTo(Kind.RUN) Optional<String> run,
    @Says(value = "Nominal impedance.", example = "8 ohm") Resistance impedance,
    @Says(value = "Speakers in parallel on the run; one unless said.", example = "1")
        Optional<Integer> count,
    @Says(
            value = "Power intended for each, or the tap of a constant-voltage line.",
            example = "40 W")
        Optional<Power> power,
    @Says(value = "Conductors joined for each pole; one unless said.", example = "2")
        Optional<Integer> conductorsInParallel) {}
