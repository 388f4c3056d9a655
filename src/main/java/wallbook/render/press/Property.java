package wallbook.render.press;

import java.util.EnumSet;
import java.util.Set;

/** What a declaration can set, once short forms are taken apart. */
enum Property {
  DISPLAY,
  MARGIN_TOP,
  MARGIN_RIGHT,
  MARGIN_BOTTOM,
  MARGIN_LEFT,
  PADDING_TOP,
  PADDING_RIGHT,
  PADDING_BOTTOM,
  PADDING_LEFT,
  BORDER_TOP_WIDTH,
  BORDER_RIGHT_WIDTH,
  BORDER_BOTTOM_WIDTH,
  BORDER_LEFT_WIDTH,
  BORDER_TOP_STYLE,
  BORDER_RIGHT_STYLE,
  BORDER_BOTTOM_STYLE,
  BORDER_LEFT_STYLE,
  BORDER_TOP_COLOR,
  BORDER_RIGHT_COLOR,
  BORDER_BOTTOM_COLOR,
  BORDER_LEFT_COLOR,
  BACKGROUND_COLOR,
  WIDTH,
  MAX_WIDTH,
  HEIGHT,
  VERTICAL_ALIGN,
  BREAK_BEFORE,
  BREAK_AFTER,
  BREAK_INSIDE,
  PAGE,
  COLUMN_COUNT,
  COLUMN_GAP,
  TABLE_LAYOUT,
  TEXT_DECORATION,
  CONTENT,
  FONT_SIZE,
  FONT_WEIGHT,
  FONT_STYLE,
  LINE_HEIGHT,
  COLOR,
  LETTER_SPACING,
  TEXT_TRANSFORM,
  TEXT_ALIGN,
  TEXT_INDENT,
  WHITE_SPACE,
  WORD_WRAP,
  LIST_STYLE_TYPE,
  BORDER_COLLAPSE,
  ORPHANS,
  WIDOWS;

  /** What an element takes from the one around it if nothing is said. */
  static final Set<Property> INHERITED = EnumSet.range(FONT_SIZE, WIDOWS);

  /** The same property of the sides top, right, bottom and left. */
  static Property side(Property top, int side) {
    return values()[top.ordinal() + side];
  }
}
