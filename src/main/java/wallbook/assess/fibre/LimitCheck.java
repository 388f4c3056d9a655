package wallbook.assess.fibre;

import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * One quantity of a link held against what an application asks of it.
 *
 * @param margin positive or zero if the limit holds
 * @param share margin as a share of the limit, by which limits of different kinds are compared
 * @param words what is compared, as a clause
 */
record LimitCheck(
    Quantity value, Quantity limit, Quantity margin, double share, Phrase words, Source source) {
  /** Sums of decimal fractions miss a limit they meet exactly by some 1e-16. */
  static final double ROUNDING = 1e-9;

  static LimitCheck length(Length length, Length reach, Source source) {
    Length left = reach.minus(length);
    double share = clean(left.ratioTo(reach));
    return new LimitCheck(
        length,
        reach,
        left,
        share,
        share >= 0
            ? Phrase.of("fibre.limit.length", "length", length, "reach", reach)
            : Phrase.of(
                "fibre.short.length", "length", length, "reach", reach, "over", left.times(-1)),
        source);
  }

  static LimitCheck loss(Decibels loss, Decibels most, Source source) {
    Decibels left = most.minus(loss);
    double share = clean(left.ratioTo(most));
    return new LimitCheck(
        loss,
        most,
        left,
        share,
        share >= 0
            ? Phrase.of("fibre.limit.loss", "loss", loss, "most", most)
            : Phrase.of("fibre.short.loss", "loss", loss, "most", most, "over", left.times(-1)),
        source);
  }

  static LimitCheck fibres(Count fibres, Count needed, Source source) {
    Count left = fibres.minus(needed);
    return new LimitCheck(
        fibres,
        needed,
        left,
        (double) left.number() / needed.number(),
        Phrase.of(
            left.number() >= 0 ? "fibre.limit.fibres" : "fibre.short.fibres",
            "fibres",
            fibres.number(),
            "needed",
            needed.number()),
        source);
  }

  boolean holds() {
    return share >= 0;
  }

  private static double clean(double share) {
    return Math.abs(share) < ROUNDING ? 0 : share;
  }
}
