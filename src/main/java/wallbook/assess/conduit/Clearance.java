package wallbook.assess.conduit;

import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Diameter;
import wallbook.quantity.Quantity;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.Proof;
import wallbook.record.ProofMethod;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * How far a conduit may be relied on to take anything more. A mandrel or slug drawn through proves
 * the bore to its own size; a line blown or a string drawn through proves only that something thin
 * passes. Crushed or blocked, it carries nothing until it is cleared.
 *
 * @param best verdict that nothing new in the conduit can exceed
 * @param reason why, in words
 * @param provedTo diameter that was drawn through, where recorded
 */
record Clearance(Verdict best, Phrase reason, Optional<Diameter> provedTo) {

  static Clearance of(Conduit conduit) {
    if (conduit.condition() == ConduitCondition.CRUSHED) {
      return hindered(Verdict.BEYOND, Phrase.of("conduit.clearance.crushed"));
    } else if (conduit.condition() == ConduitCondition.BLOCKED) {
      return hindered(Verdict.BEYOND, Phrase.of("conduit.clearance.blocked"));
    } else if (conduit.proved().isEmpty()) {
      return hindered(Verdict.CONDITIONAL, Phrase.of("conduit.clearance.not-proved"));
    }
    Proof proof = conduit.proved().get();
    if (proof.by() == ProofMethod.BLOWN_LINE || proof.by() == ProofMethod.STRING_DRAWN) {
      return hindered(
          Verdict.CONDITIONAL, Phrase.of("conduit.clearance.line-only", "date", proof.date()));
    } else if (conduit.condition() == ConduitCondition.UNKNOWN) {
      return hindered(
          Verdict.CONDITIONAL, Phrase.of("conduit.clearance.unknown-since", "date", proof.date()));
    }
    return new Clearance(
        Verdict.WITHIN,
        Phrase.of("conduit.clearance.proved", "date", proof.date()),
        proof.size().map(Diameter::of));
  }

  /** Whether the conduit carries nothing more as it is. */
  boolean isClosed() {
    return best == Verdict.BEYOND;
  }

  /**
   * Gives an assessment its value: nothing for a closed conduit, with the computed value said as
   * what holds once it is clear again.
   *
   * @param nothing the value that nothing has, of the same kind
   */
  Assessment.Builder value(Assessment.Builder builder, Quantity computed, Quantity nothing) {
    return isClosed()
        ? builder
            .value(nothing)
            .assuming(Phrase.of("conduit.clearance.once-clear", "value", computed))
        : builder.value(computed);
  }

  private static Clearance hindered(Verdict best, Phrase reason) {
    return new Clearance(best, reason, Optional.empty());
  }

  /**
   * Completes an assessment of something new in the conduit. What cannot be even in a clear conduit
   * stays beyond its limit; anything else is no better than the conduit's state, and conditional
   * where it is wider than what was drawn through.
   *
   * @param ifClear verdict for a clear conduit
   * @param across diameter of the new thing
   * @param limit what limits it in a clear conduit
   */
  Assessment judge(
      Assessment.Builder builder, Verdict ifClear, Diameter across, Phrase limit, Source source) {
    if (ifClear == Verdict.BEYOND) {
      Assessment.Builder limited = builder.limitedBy(limit);
      return (best == Verdict.WITHIN ? limited : limited.assuming(reason))
          .verdict(Verdict.BEYOND, source);
    }
    if (best != Verdict.WITHIN) {
      return builder
          .limitedBy(reason)
          .hangingOn(List.of(reason))
          .assuming(limit)
          .verdict(best, source);
    }
    Optional<Diameter> tooNarrow = provedTo.filter(size -> across.compareTo(size) > 0);
    if (tooNarrow.isPresent()) {
      Phrase provedTo = Phrase.of("conduit.clearance.proved-to", "size", tooNarrow.get());
      return builder
          .limitedBy(provedTo)
          .hangingOn(List.of(provedTo))
          .assuming(limit)
          .verdict(Verdict.CONDITIONAL, source);
    }
    return builder.limitedBy(limit).verdict(ifClear, source);
  }
}
