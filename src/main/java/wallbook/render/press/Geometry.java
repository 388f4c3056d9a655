package wallbook.render.press;

/**
 * Measures of a page in points.
 *
 * @param content where its text stands
 * @param area what lies between its margins
 */
record Geometry(float width, float height, Area content, Area area) {
  /** A rectangle, its corner counted from the page's upper left. */
  record Area(float left, float top, float width, float height) {}
}
