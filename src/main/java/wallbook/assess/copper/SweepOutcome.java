package wallbook.assess.copper;

import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.record.SweepPoint;

/**
 * What a sweep of one measured quantity comes to.
 *
 * @param judged points compared with the limit
 * @param free points inside the range that cannot fail
 * @param outside points outside the range of the limit
 * @param worst the judged point with the least margin
 * @param top highest frequency swept inside the range; zero without points
 * @param pairs pairs or pair combinations measured
 * @param bothEnds whether it was measured from both ends
 */
record SweepOutcome(
    int judged,
    int free,
    int outside,
    Optional<Worst> worst,
    Frequency top,
    int pairs,
    boolean bothEnds) {

  /** A judged point with its limit and margin. */
  record Worst(SweepPoint point, Limit limit, Decibels margin) {}

  /** Whether the quantity was swept at all where it has a limit. */
  boolean hasPoints() {
    return judged + free > 0;
  }
}
