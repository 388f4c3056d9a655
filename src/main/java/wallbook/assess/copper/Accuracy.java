package wallbook.assess.copper;

import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.wording.Phrase;

/**
 * Accuracy of a field instrument at the limit, as the record gives it. A pass by less is marginal;
 * a miss by less is still a miss, and worth measuring again.
 */
record Accuracy(Optional<Decibels> stated) {

  /** The verdict of a margin, with what is to be said of the accuracy beside it. */
  Verdict judge(Decibels margin, Assessment.Builder builder) {
    boolean inside = margin.inDecibels() >= 0;
    if (stated.isEmpty()) {
      builder.assuming(Phrase.of("pairs.accuracy.not-stated"));
      return inside ? Verdict.WITHIN : Verdict.BEYOND;
    }
    boolean marginal = Math.abs(margin.inDecibels()) <= stated.get().inDecibels();
    if (!inside) {
      if (marginal) {
        builder.assuming(Phrase.of("pairs.accuracy.marginal-fail", "accuracy", stated.get()));
      }
      return Verdict.BEYOND;
    }
    if (!marginal) {
      return Verdict.WITHIN;
    }
    builder.onlyIf(Phrase.of("pairs.accuracy.marginal-pass", "accuracy", stated.get()));
    return Verdict.CONDITIONAL;
  }
}
