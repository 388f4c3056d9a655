package wallbook.record;

/** Surroundings that a run passes through. */
public enum RunEnvironment implements Word {
  IN_WALL,
  ATTIC,
  CRAWL_SPACE,
  RISER,
  PLENUM,
  SLAB,
  BURIED,
  OUTDOOR_EXPOSED,
  OUTDOOR_CONDUIT;
}
