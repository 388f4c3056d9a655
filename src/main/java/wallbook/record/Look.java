package wallbook.record;

import java.util.Optional;

/** How the integrator's documents look beyond the program's own theme. */
public record Look(
    Origin origin,
    @Says(
            value =
                "Colour of headings and rules, as # and six hexadecimal digits; dark enough to be"
                    + " read on white.",
            example = "#0f4a5c")
        Optional<String> accent,
    @Says(value = "JPEG or PNG file beside the record, for the cover.", example = "files/logo.png")
        Optional<String> logo,
    @Says(
            value = "A line for the foot of every page.",
            example = "Harbour Lane Low Voltage (invented), 555-0100")
        Optional<String> footer) {}
