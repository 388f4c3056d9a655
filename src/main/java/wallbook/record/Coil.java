package wallbook.record;

import wallbook.quantity.Length;

/** Cable coiled at a stub-out. */
public record Coil(
    Origin origin,
    @Says(value = "Run that is coiled there.", example = "r-ls-1") @RefersTo(Kind.RUN) String run,
    @Says(value = "How much is coiled.", example = "10 ft") Length length) {}
