package wallbook.render.press;

import wallbook.render.Tag;

/** A picture in the flow, at its size in points. */
record Picture(Image image, Tag tag, float width, float height) implements Body {
  @Override
  public void ground(Sheet sheet, float x, float y) {}

  @Override
  public void ink(Sheet sheet, float x, float y) {
    sheet.picture(image, tag, x, y, width, height);
  }
}
