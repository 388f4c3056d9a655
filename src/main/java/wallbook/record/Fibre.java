package wallbook.record;

import java.util.Optional;

/** What is known of the fibres of one run beyond its ends. */
public record Fibre(
    Origin origin,
    @Says(value = "Name for references.", example = "f-ap-1") @Id(Kind.FIBRE) String id,
    @Says(value = "The fibre run.", example = "r-ap-1-f") @RefersTo(Kind.RUN) String run,
    @Says(value = "Mated connector pairs in the path as it is.", example = "0")
        Optional<Integer> connectorsMade,
    @Says(value = "Mated connector pairs once the fibre is lit.", example = "2")
        Optional<Integer> connectorsPlanned,
    @Says(value = "Splices as it is.", example = "0") Optional<Integer> splicesMade,
    @Says(value = "Splices once the fibre is lit.", example = "0") Optional<Integer> splicesPlanned,
    @Says(
            value = "How to find the unterminated end.",
            example = "coiled behind the blank plate, blue tape")
        Optional<String> whereFound,
    @Says("Anything a later reader should know.") Optional<String> note) {}
