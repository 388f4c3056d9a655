package wallbook.record;

/**
 * What this integrator usually provides at a kind of place, where that differs from the built-in
 * table.
 */
public record Provision(
    Origin origin,
    @Says("Kind of place.") PlaceUse use,
    @Says("What is counted.") ProvisionGroup group,
    @Says(value = "How many are usual; 0 to expect none.", example = "2") int count) {}
