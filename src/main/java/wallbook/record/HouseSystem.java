package wallbook.record;

import java.time.LocalDate;
import java.util.Optional;

/** One of the systems that the wiring serves. */
public record HouseSystem(
    Origin origin,
    @Says(value = "Name for references.", example = "network") @Id(Kind.SYSTEM) String id,
    @Says(value = "Name as printed.", example = "Home network") String name,
    @Says("Kind of system.") SystemKind kind,
    @Says("What works at handover, in plain words.") Optional<String> works,
    @Says("What was left for later, in plain words.") Optional<String> later,
    @Says(value = "Day it was shown to the owner.", example = "2026-05-12")
        Optional<LocalDate> demonstrated,
    @Says("Anything a later reader should know.") Optional<String> note) {}
