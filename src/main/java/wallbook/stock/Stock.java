package wallbook.stock;

import wallbook.record.Word;

/** What labels are printed on. */
public enum Stock implements Word {
  LETTER,
  A4,
  /** Continuous tape; each label is a page of its own. */
  TAPE;
}
