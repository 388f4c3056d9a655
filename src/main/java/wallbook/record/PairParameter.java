package wallbook.record;

/** Measured quantity of a balanced-pair test. */
public enum PairParameter implements Word {
  INSERTION_LOSS,
  NEXT,
  PSNEXT,
  ACRF,
  PSACRF,
  RETURN_LOSS,
  DELAY,
  SKEW,
  LOOP_RESISTANCE;
}
