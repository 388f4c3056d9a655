package wallbook.record;

/** How a conduit was shown to be clear. */
public enum ProofMethod implements Word {
  MANDREL,
  SLUG,
  BLOWN_LINE,
  STRING_DRAWN;
}
