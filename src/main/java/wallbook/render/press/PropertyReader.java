package wallbook.render.press;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Knows the properties, what each may be set to, and the short forms of several at once. */
final class PropertyReader {
  /** The only family; others may follow it in a list, for a browser. */
  private static final String FAMILY = "noto sans";

  private static final float BOLD_FROM = 600;
  private static final Map<String, Reader> READERS = new HashMap<>();

  /** Reads a value; nothing if it doesn't fit. */
  private interface Reader {
    Optional<List<Declaration>> read(List<Token> value);
  }

  static {
    named("display", Property.DISPLAY, Keywords.Display.class);
    named("white-space", Property.WHITE_SPACE, Keywords.WhiteSpace.class);
    named("text-align", Property.TEXT_ALIGN, Keywords.Align.class);
    named("vertical-align", Property.VERTICAL_ALIGN, Keywords.VerticalAlign.class);
    named("text-transform", Property.TEXT_TRANSFORM, Keywords.Transform.class);
    named("text-decoration", Property.TEXT_DECORATION, Keywords.Decoration.class);
    named("list-style-type", Property.LIST_STYLE_TYPE, Keywords.ListMark.class);
    named("list-style", Property.LIST_STYLE_TYPE, Keywords.ListMark.class);
    named("border-collapse", Property.BORDER_COLLAPSE, Keywords.BorderCollapse.class);
    named("table-layout", Property.TABLE_LAYOUT, Keywords.TableLayout.class);
    named("font-style", Property.FONT_STYLE, Keywords.Slant.class);
    named("word-wrap", Property.WORD_WRAP, Keywords.WordWrap.class);
    named("overflow-wrap", Property.WORD_WRAP, Keywords.WordWrap.class);
    for (String begin : List.of("page-break-", "break-")) {
      named(begin + "before", Property.BREAK_BEFORE, Keywords.Break.class);
      named(begin + "after", Property.BREAK_AFTER, Keywords.Break.class);
      named(begin + "inside", Property.BREAK_INSIDE, Keywords.Break.class);
    }
    one("color", Property.COLOR, Values::colour);
    one("background-color", Property.BACKGROUND_COLOR, Values::colour);
    one("background", Property.BACKGROUND_COLOR, Values::colour);
    one("width", Property.WIDTH, PropertyReader::size);
    one("max-width", Property.MAX_WIDTH, PropertyReader::sizeOrNone);
    one("height", Property.HEIGHT, PropertyReader::size);
    one("font-size", Property.FONT_SIZE, PropertyReader::positive);
    one("font-weight", Property.FONT_WEIGHT, PropertyReader::weight);
    one("line-height", Property.LINE_HEIGHT, PropertyReader::leading);
    one("letter-spacing", Property.LETTER_SPACING, PropertyReader::spacing);
    one("text-indent", Property.TEXT_INDENT, Values::lengthOrShare);
    one("column-gap", Property.COLUMN_GAP, PropertyReader::positive);
    one("column-count", Property.COLUMN_COUNT, PropertyReader::whole);
    one("orphans", Property.ORPHANS, PropertyReader::whole);
    one("widows", Property.WIDOWS, PropertyReader::whole);
    one("page", Property.PAGE, token -> Optional.of(token.name()).filter(n -> !n.isEmpty()));
    READERS.put(
        "content",
        value ->
            Values.content(value).map(parts -> List.of(new Declaration(Property.CONTENT, parts))));
    READERS.put("font-family", PropertyReader::family);
    four("margin", Property.MARGIN_TOP, PropertyReader::margin);
    four("padding", Property.PADDING_TOP, PropertyReader::positive);
    READERS.put(
        "border-width", value -> sides(value, Property.BORDER_TOP_WIDTH, Values::borderWidth));
    READERS.put(
        "border-style", value -> sides(value, Property.BORDER_TOP_STYLE, PropertyReader::style));
    READERS.put("border-color", value -> sides(value, Property.BORDER_TOP_COLOR, Values::colour));
    READERS.put("border", value -> border(value, 0, 3));
    String[] sides = {"top", "right", "bottom", "left"};
    for (int i = 0; i < sides.length; i++) {
      int side = i;
      READERS.put("border-" + sides[i], value -> border(value, side, side));
      String name = "border-" + sides[i];
      one(name + "-width", Property.side(Property.BORDER_TOP_WIDTH, i), Values::borderWidth);
      one(name + "-style", Property.side(Property.BORDER_TOP_STYLE, i), PropertyReader::style);
      one(name + "-color", Property.side(Property.BORDER_TOP_COLOR, i), Values::colour);
    }
  }

  private PropertyReader() {}

  /** What a declaration sets. */
  static List<Declaration> read(String name, String text) throws StyleProblem {
    String near = name + ":" + text;
    Reader reader = READERS.get(name);
    if (reader == null) {
      throw new StyleProblem("the property '" + name + "' is not known here", near);
    }
    List<Token> value = new Scanner(text).tokens();
    if (value.size() == 1 && value.get(0).is("inherit")) {
      return inherit(name, reader);
    }
    return reader
        .read(value)
        .orElseThrow(
            () ->
                new StyleProblem(
                    "the property '%s' can't be set to '%s' here".formatted(name, text.strip()),
                    near));
  }

  private static List<Declaration> inherit(String name, Reader reader) throws StyleProblem {
    for (String sample :
        List.of(
            "0",
            "none",
            "auto",
            "1",
            "normal",
            "left",
            "block",
            "black",
            "disc",
            "collapse",
            "x")) {
      Optional<List<Declaration>> some = reader.read(new Scanner(sample).tokens());
      if (some.isPresent()
          && some.get().stream().allMatch(one -> Property.INHERITED.contains(one.property()))) {
        return some.get().stream()
            .map(one -> new Declaration(one.property(), Declaration.INHERIT))
            .toList();
      }
    }
    throw new StyleProblem("the property '" + name + "' can't be inherited here", name);
  }

  private static <E extends Enum<E>> void named(String name, Property property, Class<E> type) {
    one(name, property, token -> Keywords.find(type, token.name()));
  }

  private static void one(
      String name, Property property, Function<Token, ? extends Optional<?>> value) {
    READERS.put(
        name,
        tokens ->
            tokens.size() == 1
                ? value.apply(tokens.get(0)).map(read -> List.of(new Declaration(property, read)))
                : Optional.empty());
  }

  private static void four(String name, Property top, Function<Token, Optional<Measure>> value) {
    READERS.put(name, tokens -> sides(tokens, top, value));
    String[] sides = {"-top", "-right", "-bottom", "-left"};
    for (int i = 0; i < sides.length; i++) {
      one(name + sides[i], Property.side(top, i), value);
    }
  }

  /** One to four values, for the sides from the top clockwise (CSS 2.1, 8.3). */
  private static Optional<List<Declaration>> sides(
      List<Token> tokens, Property top, Function<Token, ? extends Optional<?>> value) {
    if (tokens.isEmpty() || tokens.size() > 4) {
      return Optional.empty();
    }
    int[][] order = {{0, 0, 0, 0}, {0, 1, 0, 1}, {0, 1, 2, 1}, {0, 1, 2, 3}};
    List<Declaration> all = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      Optional<?> read = value.apply(tokens.get(order[tokens.size() - 1][side]));
      if (read.isEmpty()) {
        return Optional.empty();
      }
      all.add(new Declaration(Property.side(top, side), read.get()));
    }
    return Optional.of(all);
  }

  private static Optional<List<Declaration>> border(List<Token> tokens, int first, int last) {
    Optional<Measure> width = Optional.empty();
    Optional<Keywords.BorderStyle> style = Optional.empty();
    Optional<Integer> colour = Optional.empty();
    if (tokens.isEmpty() || tokens.size() > 3) {
      return Optional.empty();
    }
    for (Token token : tokens) {
      if (style.isEmpty() && style(token).isPresent()) {
        style = style(token);
      } else if (width.isEmpty() && Values.borderWidth(token).isPresent()) {
        width = Values.borderWidth(token);
      } else if (colour.isEmpty() && Values.colour(token).isPresent()) {
        colour = Values.colour(token);
      } else {
        return Optional.empty();
      }
    }
    List<Declaration> all = new ArrayList<>();
    for (int side = first; side <= last; side++) {
      all.add(
          new Declaration(
              Property.side(Property.BORDER_TOP_STYLE, side),
              style.orElse(Keywords.BorderStyle.NONE)));
      all.add(
          new Declaration(
              Property.side(Property.BORDER_TOP_WIDTH, side),
              width.orElse(Measure.ofPoints(2.25f))));
      if (colour.isPresent()) {
        all.add(new Declaration(Property.side(Property.BORDER_TOP_COLOR, side), colour.get()));
      }
    }
    return Optional.of(all);
  }

  private static Optional<List<Declaration>> family(List<Token> tokens) {
    boolean ours =
        !tokens.isEmpty()
            && tokens.get(0).kind() == Token.Kind.STRING
            && tokens.get(0).text().equalsIgnoreCase(FAMILY);
    return ours ? Optional.of(List.of()) : Optional.empty();
  }

  private static Optional<Keywords.BorderStyle> style(Token token) {
    return Keywords.find(Keywords.BorderStyle.class, token.name());
  }

  private static Optional<Measure> margin(Token token) {
    return token.is("auto") ? Optional.of(Measure.AUTO) : Values.lengthOrShare(token);
  }

  private static Optional<Measure> size(Token token) {
    return token.is("auto") ? Optional.of(Measure.AUTO) : positive(token);
  }

  private static Optional<Measure> sizeOrNone(Token token) {
    return token.is("none") ? Optional.of(Measure.AUTO) : positive(token);
  }

  private static Optional<Measure> positive(Token token) {
    return Values.lengthOrShare(token).filter(measure -> measure.value() >= 0);
  }

  private static Optional<Boolean> weight(Token token) {
    if (token.kind() == Token.Kind.NUMBER && token.text().isEmpty()) {
      return Optional.of(token.number() >= BOLD_FROM);
    }
    return token.is("bold")
        ? Optional.of(true)
        : Optional.of(false).filter(no -> token.is("normal"));
  }

  private static Optional<Measure> leading(Token token) {
    if (token.is("normal")) {
      return Optional.of(Measure.AUTO);
    }
    boolean factor =
        token.kind() == Token.Kind.NUMBER && token.text().isEmpty() && token.number() > 0;
    return factor ? Optional.of(new Measure(token.number(), Measure.Unit.FACTOR)) : positive(token);
  }

  private static Optional<Measure> spacing(Token token) {
    return token.is("normal") ? Optional.of(Measure.ZERO) : Values.length(token);
  }

  private static Optional<Integer> whole(Token token) {
    boolean fits =
        token.kind() == Token.Kind.NUMBER
            && token.text().isEmpty()
            && token.number() >= 1
            && token.number() == (int) token.number();
    return fits ? Optional.of((int) token.number()) : Optional.empty();
  }
}
