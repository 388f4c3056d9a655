package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import wallbook.render.Face;
import wallbook.render.Typeface;

/** Makes a style of declarations, weak ones first, and the style of the element around. */
final class Cascade {
  private static final float BODY_PT = 12;
  private static final float SHIFT_DOWN = -0.2f;
  private static final float SHIFT_UP = 0.35f;

  /** What stands above the root. */
  static final Style ABOVE = new Cascade(null, BODY_PT).style();

  private final Object[] values = new Object[Property.values().length];
  private final Style parent;
  private final float rootPt;

  private Cascade(Style parent, float rootPt) {
    this.parent = parent;
    this.rootPt = rootPt;
  }

  /**
   * @param rootPt size of the root's type
   */
  static Style of(Style parent, List<Declaration> declarations, float rootPt) {
    Cascade cascade = new Cascade(parent, rootPt);
    for (Declaration declaration : declarations) {
      cascade.values[declaration.property().ordinal()] = declaration.value();
    }
    return cascade.style();
  }

  private Style style() {
    float size = size();
    TypeStyle type = type(size);
    return new Style(type, block(size), box(type), list(Property.CONTENT));
  }

  private float size() {
    if (!isSet(Property.FONT_SIZE)) {
      return parent == null ? BODY_PT : parent.type().size();
    }
    Measure measure = get(Property.FONT_SIZE, Measure.class);
    float around = parent.type().size();
    return measure.length(around, rootPt).of(around);
  }

  private TypeStyle type(float size) {
    TypeStyle above = parent == null ? null : parent.type();
    boolean bold =
        isSet(Property.FONT_WEIGHT)
            ? get(Property.FONT_WEIGHT, Boolean.class)
            : above != null && above.face().bold();
    boolean italic =
        isSet(Property.FONT_STYLE)
            ? get(Property.FONT_STYLE, Keywords.Slant.class) != Keywords.Slant.NORMAL
            : above != null && above.face().italic();
    float factor = above == null ? 0 : above.leadingFactor();
    float points = above == null ? 0 : above.leadingPt();
    if (isSet(Property.LINE_HEIGHT)) {
      Measure leading = get(Property.LINE_HEIGHT, Measure.class);
      boolean bare = leading.unit() == Measure.Unit.FACTOR;
      factor =
          bare ? leading.value() : leading.unit() == Measure.Unit.AUTO ? Typeface.USUAL_LEADING : 0;
      points = leading.length(size, rootPt).of(size);
    } else if (above == null) {
      factor = Typeface.USUAL_LEADING;
    }
    return new TypeStyle(
        Face.of(bold, italic),
        size,
        factor,
        points,
        or(Property.COLOR, Integer.class, above == null ? 0 : above.colour()),
        isSet(Property.LETTER_SPACING)
            ? get(Property.LETTER_SPACING, Measure.class).length(size, rootPt).of(size)
            : above == null ? 0 : above.letterSpacing(),
        or(
            Property.TEXT_TRANSFORM,
            Keywords.Transform.class,
            above == null ? Keywords.Transform.NONE : above.transform()),
        or(
            Property.WHITE_SPACE,
            Keywords.WhiteSpace.class,
            above == null ? Keywords.WhiteSpace.NORMAL : above.whiteSpace()),
        isSet(Property.WORD_WRAP)
            ? get(Property.WORD_WRAP, Keywords.WordWrap.class) != Keywords.WordWrap.NORMAL
            : above != null && above.breaksWords(),
        isSet(Property.TEXT_DECORATION)
            ? get(Property.TEXT_DECORATION, Keywords.Decoration.class)
                == Keywords.Decoration.UNDERLINE
            : above != null && above.underlined(),
        raise(above));
  }

  private float raise(TypeStyle above) {
    float around = above == null ? 0 : above.raise();
    return switch (or(
        Property.VERTICAL_ALIGN, Keywords.VerticalAlign.class, Keywords.VerticalAlign.BASELINE)) {
      case SUB -> around + SHIFT_DOWN * above.size();
      case SUPER -> around + SHIFT_UP * above.size();
      default -> around;
    };
  }

  private BlockStyle block(float size) {
    BlockStyle above =
        parent == null
            ? new BlockStyle(Keywords.Align.LEFT, Length.ZERO, Keywords.ListMark.DISC, 2, 2, false)
            : parent.block();
    return new BlockStyle(
        or(Property.TEXT_ALIGN, Keywords.Align.class, above.align()),
        isSet(Property.TEXT_INDENT)
            ? get(Property.TEXT_INDENT, Measure.class).length(size, rootPt)
            : above.indent(),
        or(Property.LIST_STYLE_TYPE, Keywords.ListMark.class, above.listMark()),
        or(Property.ORPHANS, Integer.class, above.orphans()),
        or(Property.WIDOWS, Integer.class, above.widows()),
        isSet(Property.BORDER_COLLAPSE)
            ? get(Property.BORDER_COLLAPSE, Keywords.BorderCollapse.class)
                == Keywords.BorderCollapse.COLLAPSE
            : above.collapses());
  }

  private BoxStyle box(TypeStyle type) {
    float size = type.size();
    List<Border> borders = new ArrayList<>(4);
    for (int side = 0; side < 4; side++) {
      borders.add(border(side, type));
    }
    return new BoxStyle(
        or(Property.DISPLAY, Keywords.Display.class, Keywords.Display.INLINE),
        four(Property.MARGIN_TOP, size),
        four(Property.PADDING_TOP, size),
        borders,
        or(Property.BACKGROUND_COLOR, Integer.class, Values.TRANSPARENT),
        length(Property.WIDTH, size, Length.AUTO),
        length(Property.MAX_WIDTH, size, Length.AUTO),
        length(Property.HEIGHT, size, Length.AUTO),
        or(Property.VERTICAL_ALIGN, Keywords.VerticalAlign.class, Keywords.VerticalAlign.BASELINE),
        or(Property.BREAK_BEFORE, Keywords.Break.class, Keywords.Break.AUTO),
        or(Property.BREAK_AFTER, Keywords.Break.class, Keywords.Break.AUTO),
        or(Property.BREAK_INSIDE, Keywords.Break.class, Keywords.Break.AUTO),
        or(Property.PAGE, String.class, ""),
        or(Property.COLUMN_COUNT, Integer.class, 1),
        length(Property.COLUMN_GAP, size, new Length(size, 0, false)).points(),
        or(Property.TABLE_LAYOUT, Keywords.TableLayout.class, Keywords.TableLayout.AUTO)
            == Keywords.TableLayout.FIXED);
  }

  private Border border(int side, TypeStyle type) {
    Keywords.BorderStyle style =
        or(
            Property.side(Property.BORDER_TOP_STYLE, side),
            Keywords.BorderStyle.class,
            Keywords.BorderStyle.NONE);
    int colour = or(Property.side(Property.BORDER_TOP_COLOR, side), Integer.class, type.colour());
    if (style != Keywords.BorderStyle.SOLID || colour == Values.TRANSPARENT) {
      return Border.NONE;
    }
    Length width = length(Property.side(Property.BORDER_TOP_WIDTH, side), type.size(), Length.ZERO);
    return new Border(width.points(), colour);
  }

  private List<Length> four(Property top, float size) {
    List<Length> four = new ArrayList<>(4);
    for (int side = 0; side < 4; side++) {
      four.add(length(Property.side(top, side), size, Length.ZERO));
    }
    return four;
  }

  private Length length(Property property, float size, Length usual) {
    return isSet(property) ? get(property, Measure.class).length(size, rootPt) : usual;
  }

  /** Whether something else is said than what an element takes from the one around. */
  private boolean isSet(Property property) {
    Object value = values[property.ordinal()];
    return value != null && value != Declaration.INHERIT;
  }

  private <T> T get(Property property, Class<T> type) {
    return type.cast(values[property.ordinal()]);
  }

  private <T> T or(Property property, Class<T> type, T usual) {
    return isSet(property) ? get(property, type) : usual;
  }

  @SuppressWarnings("unchecked") // the one property with a list is read as one of contents
  private List<Content> list(Property property) {
    return isSet(property) ? (List<Content>) values[property.ordinal()] : List.of();
  }
}
