package wallbook.record;

import java.time.LocalDate;
import java.util.Optional;

/** Something promised that is not there, or not as promised, and what stands in for it. */
public record ExceptionItem(
    Origin origin,
    @Says(value = "Name for references.", example = "x-1") @Id(Kind.EXCEPTION) String id,
    @Says("Why.") ExceptionKind kind,
    @Says(
            value = "What is not as promised.",
            example = "Contact at the pantry window destroyed before drywall")
        String what,
    @Says("Run concerned.") @RefersTo(Kind.RUN) Optional<String> run,
    @Says("Conduit concerned.") @RefersTo(Kind.CONDUIT) Optional<String> conduit,
    @Says("Place concerned.") @RefersTo(Kind.PLACE) Optional<String> place,
    @Says("System concerned.") @RefersTo(Kind.SYSTEM) Optional<String> system,
    @Says(value = "What stands in for it.", example = "wireless contact") Optional<String> standsIn,
    @Says(value = "Day the owner agreed.", example = "2026-03-02") Optional<LocalDate> agreed,
    @Says("Whether it is still open at handover.") Optional<Boolean> open,
    @Says("Anything a later reader should know.") Optional<String> note) {}
