package wallbook.record;

import java.util.Optional;

/** Somebody who took part in the job or is to be called about it. */
public record Party(
    Origin origin,
    @Says("Part played.") PartyRole role,
    @Says(value = "Name as printed.", example = "Harbour Lane Low Voltage (invented)") String name,
    @Says(value = "Telephone number.", example = "555-0100") Optional<String> phone,
    @Says("Electronic mail.") Optional<String> email,
    @Says(value = "Licence number, where the trade is licensed.", example = "LV-00000")
        Optional<String> licence,
    @Says("Anything a later reader should know.") Optional<String> note) {}
