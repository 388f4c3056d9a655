package wallbook.record;

/** What a space is used for. */
public enum SpaceKind implements Word {
  BEDROOM,
  LIVING,
  DINING,
  KITCHEN,
  STUDY,
  MEDIA_ROOM,
  HI_FI_ROOM,
  BATHROOM,
  HALL,
  STAIR,
  CLOSET,
  UTILITY,
  BASEMENT,
  ATTIC,
  CRAWL_SPACE,
  GARAGE,
  TERRACE,
  GARDEN,
  DOCK,
  DRIVEWAY,
  OTHER_ROOM,
  OTHER_OUTDOOR;

  /** Whether the space is outside the building. */
  public boolean isOutdoor() {
    return this == TERRACE
        || this == GARDEN
        || this == DOCK
        || this == DRIVEWAY
        || this == OTHER_OUTDOOR;
  }
}
