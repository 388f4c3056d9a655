package wallbook.record;

import wallbook.quantity.Length;

/** A storey of the building, or the level of the ground outside. */
public record Floor(
    Origin origin,
    @Says(value = "Name for references.", example = "ground") @Id(Kind.FLOOR) String id,
    @Says(value = "Name as printed.", example = "Ground floor") String name,
    @Says(value = "Order from below; 0 is the entrance level.", example = "0") int level,
    @Says(
            value = "Height of the finished floor above that of the entrance level.",
            example = "9 ft 6 in")
        Length elevation) {}
