package wallbook.compose.drawing;

/**
 * The things that have a symbol. The shapes are this project's own: a square is at a wall, a circle
 * overhead, a triangle senses or radiates, a diamond belongs to a pathway, a hexagon is where runs
 * come home.
 */
public enum SymbolKind {
  PLATE,
  BLANK_PLATE,
  TELEVISION,
  TOUCH_PANEL,
  KEYPAD,
  VOLUME_CONTROL,
  WALL_SPEAKER,
  SHADE,
  IN_WALL_COIL,
  CEILING_SPEAKER,
  ACCESS_POINT,
  PROJECTOR,
  CAMERA,
  CONTACT,
  SENSOR,
  ANTENNA,
  REPEATER,
  PULL_BOX,
  STUB_OUT,
  CONDUIT_END,
  RACK,
  PANEL,
  DEMARCATION,
  OTHER
}
