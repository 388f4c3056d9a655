package wallbook.record;

/** A door, a window or a passage without a leaf. */
public enum OpeningKind implements Word {
  DOOR,
  WINDOW,
  PASSAGE;
}
