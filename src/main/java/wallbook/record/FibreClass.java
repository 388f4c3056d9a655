package wallbook.record;

/** Class of an optical fibre. */
public enum FibreClass implements Word {
  OM1,
  OM2,
  OM3,
  OM4,
  OM5,
  OS1A,
  OS2;

  /** Whether the fibre is single-mode. */
  public boolean isSingleMode() {
    return this == OS1A || this == OS2;
  }
}
