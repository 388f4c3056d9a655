package wallbook.record;

/** Category of a balanced-pair cable. */
public enum PairCategory implements Word {
  CAT5E,
  CAT6,
  CAT6A;
}
