package wallbook.record;

/** Paper that documents are laid out for. */
public enum Paper implements Word {
  LETTER,
  A4;
}
