package wallbook.record;

/** Limit that a balanced-pair test was judged by. */
public record TestLimit(
    Origin origin,
    @Says("Standard.") TestStandard standard,
    @Says("Category or class.") PairCategory category,
    @Says("Permanent link or channel.") LinkConfiguration configuration) {}
