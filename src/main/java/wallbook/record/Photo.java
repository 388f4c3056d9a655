package wallbook.record;

import java.util.Optional;

/** A photograph kept with the record. */
public record Photo(
    Origin origin,
    @Says(value = "File beside the record.", example = "photos/kitchen-a.jpg") String file,
    @Says("Place shown.") @RefersTo(Kind.PLACE) Optional<String> place,
    @Says("Space shown.") @RefersTo(Kind.SPACE) Optional<String> space,
    @Says("Head shown.") @RefersTo(Kind.HEAD) Optional<String> head,
    @Says(value = "Letter of the wall shown.", example = "A") Optional<String> wall,
    @Says("When it was taken.") PhotoStage stage,
    @Says(
            value = "What it shows, for somebody who can't see it.",
            example = "Kitchen wall A before drywall, tape at the television box")
        String caption) {}
