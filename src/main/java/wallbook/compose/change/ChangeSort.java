package wallbook.compose.change;

/** What happened to a thing of the record, in the order of a notice. */
public enum ChangeSort {
  /** A dark run is in service now. */
  LIT,
  /** It is there now. */
  ADDED,
  /** It is at another place, head, panel or port, or elsewhere on the plan. */
  MOVED,
  /** It was tested again. */
  RETESTED,
  /** It is damaged or given up now. */
  RETIRED,
  /** It is no longer in the record. */
  GONE,
  /** Its label or name is another. */
  RENAMED,
  /** Something else about it is said now. */
  CHANGED
}
