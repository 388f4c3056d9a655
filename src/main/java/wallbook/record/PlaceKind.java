package wallbook.record;

/** How a place is built. */
public enum PlaceKind implements Word {
  WALL_PLATE,
  BLANK_PLATE,
  BOX,
  CEILING_POINT,
  FLOOR_BOX,
  IN_WALL_COIL,
  PULL_BOX,
  STUB_OUT,
  DEVICE,
  CONDUIT_END;
}
