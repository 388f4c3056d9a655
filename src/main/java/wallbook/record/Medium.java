package wallbook.record;

/** What a cable is made to carry. */
public enum Medium implements Word {
  BALANCED_PAIR,
  FIBRE,
  COAX,
  SPEAKER,
  CONTROL,
  POWER;
}
