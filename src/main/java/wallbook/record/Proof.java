package wallbook.record;

import java.time.LocalDate;
import java.util.Optional;
import wallbook.quantity.Length;

/** How and when a conduit was shown to be clear. */
public record Proof(
    Origin origin,
    @Says(value = "Day of the proof.", example = "2026-02-11") LocalDate date,
    @Says("How it was proved.") ProofMethod by,
    @Says(value = "Diameter of the mandrel or slug.", example = "1 in") Optional<Length> size) {}
