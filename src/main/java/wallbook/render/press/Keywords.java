package wallbook.render.press;

import java.util.Locale;
import java.util.Optional;

/** Values of properties that are names. */
final class Keywords {
  private Keywords() {}

  enum Display {
    BLOCK,
    INLINE,
    INLINE_BLOCK,
    LIST_ITEM,
    TABLE,
    TABLE_ROW_GROUP,
    TABLE_HEADER_GROUP,
    TABLE_FOOTER_GROUP,
    TABLE_ROW,
    TABLE_CELL,
    TABLE_CAPTION,
    TABLE_COLUMN,
    TABLE_COLUMN_GROUP,
    NONE
  }

  enum WhiteSpace {
    NORMAL,
    NOWRAP,
    PRE,
    PRE_WRAP,
    PRE_LINE;

    boolean wraps() {
      return this != NOWRAP && this != PRE;
    }

    boolean keepsLines() {
      return this == PRE || this == PRE_WRAP || this == PRE_LINE;
    }

    boolean keepsSpaces() {
      return this == PRE || this == PRE_WRAP;
    }
  }

  enum Align {
    LEFT,
    CENTER,
    RIGHT
  }

  enum VerticalAlign {
    BASELINE,
    TOP,
    MIDDLE,
    BOTTOM,
    SUB,
    SUPER
  }

  enum Transform {
    NONE,
    UPPERCASE,
    LOWERCASE,
    CAPITALIZE
  }

  enum ListMark {
    NONE,
    DISC,
    CIRCLE,
    SQUARE,
    DECIMAL,
    LOWER_ALPHA,
    UPPER_ALPHA
  }

  enum Break {
    AUTO,
    ALWAYS,
    AVOID
  }

  enum BorderStyle {
    NONE,
    HIDDEN,
    SOLID
  }

  enum BorderCollapse {
    SEPARATE,
    COLLAPSE
  }

  enum TableLayout {
    AUTO,
    FIXED
  }

  enum Slant {
    NORMAL,
    ITALIC,
    OBLIQUE
  }

  enum Decoration {
    NONE,
    UNDERLINE
  }

  enum WordWrap {
    NORMAL,
    BREAK_WORD,
    ANYWHERE
  }

  /** The value of a name as stylesheets write it, such as {@code pre-line}. */
  static <E extends Enum<E>> Optional<E> find(Class<E> type, String name) {
    String wanted = name.toUpperCase(Locale.ROOT).replace('-', '_');
    for (E value : type.getEnumConstants()) {
      if (value.name().equals(wanted)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  /** All values as stylesheets write them, for a complaint. */
  static <E extends Enum<E>> String list(Class<E> type) {
    StringBuilder list = new StringBuilder();
    for (E value : type.getEnumConstants()) {
      list.append(list.isEmpty() ? "" : ", ");
      list.append(value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    return list.toString();
  }
}
