package wallbook.render.press;

import java.util.List;

/**
 * What an element's box looks like and where it may stand. Lists of four run from the top
 * clockwise.
 *
 * @param background red, green and blue in one number, or {@link Values#TRANSPARENT}
 * @param page name of the pages that it stands on, empty if nothing is said
 */
record BoxStyle(
    Keywords.Display display,
    List<Length> margin,
    List<Length> padding,
    List<Border> border,
    int background,
    Length width,
    Length maxWidth,
    Length height,
    Keywords.VerticalAlign verticalAlign,
    Keywords.Break breakBefore,
    Keywords.Break breakAfter,
    Keywords.Break breakInside,
    String page,
    int columns,
    float columnGap,
    boolean fixedLayout) {
  static final int TOP = 0;
  static final int RIGHT = 1;
  static final int BOTTOM = 2;
  static final int LEFT = 3;

  BoxStyle {
    margin = List.copyOf(margin);
    padding = List.copyOf(padding);
    border = List.copyOf(border);
  }

  /** Border and padding of a side. */
  float inset(int side, float around) {
    return border.get(side).width() + padding.get(side).of(around);
  }

  /** Whether anything of the box itself is seen. */
  boolean isSeen() {
    if (background != Values.TRANSPARENT) {
      return true;
    }
    for (Border one : border) {
      if (one.width() > 0) {
        return true;
      }
    }
    return false;
  }
}
