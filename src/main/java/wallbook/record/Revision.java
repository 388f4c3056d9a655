package wallbook.record;

import java.time.LocalDate;
import java.util.Optional;

/** One issue of the record. */
public record Revision(
    Origin origin,
    @Says(value = "Number of the issue.", example = "2") int revision,
    @Says(value = "Day it was issued.", example = "2026-05-14") LocalDate date,
    @Says("Who issued it.") Optional<String> by,
    @Says(value = "What changed since the issue before.", example = "Two camera runs retested")
        String what) {}
