package wallbook.record;

/**
 * A fixed corner of the building that ties are measured from; of the foundation, not of siding or a
 * fence.
 */
public record Corner(
    Origin origin,
    @Says(value = "Name for references.", example = "ne") @Id(Kind.CORNER) String id,
    @Says(value = "Name as printed.", example = "north-east corner of the house") String name,
    @Says(value = "Where it is on the plan.", example = "[40 ft, 30 ft]") Point at) {}
