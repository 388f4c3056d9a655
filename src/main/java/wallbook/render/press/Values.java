package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads single values of properties. */
final class Values {
  static final int TRANSPARENT = -1;
  static final float PT_PER_MM = 72 / 25.4f;
  private static final float PT_PER_PX = 0.75f;

  /** CSS 2.1, 4.3.6. */
  private static final Map<String, Integer> COLOURS =
      Map.ofEntries(
          Map.entry("black", 0x000000),
          Map.entry("silver", 0xC0C0C0),
          Map.entry("gray", 0x808080),
          Map.entry("white", 0xFFFFFF),
          Map.entry("maroon", 0x800000),
          Map.entry("red", 0xFF0000),
          Map.entry("purple", 0x800080),
          Map.entry("fuchsia", 0xFF00FF),
          Map.entry("green", 0x008000),
          Map.entry("lime", 0x00FF00),
          Map.entry("olive", 0x808000),
          Map.entry("yellow", 0xFFFF00),
          Map.entry("navy", 0x000080),
          Map.entry("blue", 0x0000FF),
          Map.entry("teal", 0x008080),
          Map.entry("aqua", 0x00FFFF),
          Map.entry("orange", 0xFFA500));

  private static final Map<String, Float> BORDER_WIDTHS =
      Map.of("thin", PT_PER_PX, "medium", 3 * PT_PER_PX, "thick", 5 * PT_PER_PX);

  private Values() {}

  /** A length with a unit, or 0. */
  static Optional<Measure> length(Token token) {
    if (token.kind() != Token.Kind.NUMBER) {
      return Optional.empty();
    }
    float number = token.number();
    return switch (token.text()) {
      case "pt" -> Optional.of(Measure.ofPoints(number));
      case "mm" -> Optional.of(Measure.ofPoints(number * PT_PER_MM));
      case "cm" -> Optional.of(Measure.ofPoints(number * 10 * PT_PER_MM));
      case "in" -> Optional.of(Measure.ofPoints(number * 72));
      case "pc" -> Optional.of(Measure.ofPoints(number * 12));
      case "px" -> Optional.of(Measure.ofPoints(number * PT_PER_PX));
      case "em" -> Optional.of(new Measure(number, Measure.Unit.EM));
      case "rem" -> Optional.of(new Measure(number, Measure.Unit.REM));
      case "" -> number == 0 ? Optional.of(Measure.ZERO) : Optional.empty();
      default -> Optional.empty();
    };
  }

  /** A length or a share of what lies around. */
  static Optional<Measure> lengthOrShare(Token token) {
    return token.kind() == Token.Kind.NUMBER && token.text().equals("%")
        ? Optional.of(new Measure(token.number(), Measure.Unit.PERCENT))
        : length(token);
  }

  static Optional<Measure> borderWidth(Token token) {
    Float named = BORDER_WIDTHS.get(token.name());
    return named == null ? length(token) : Optional.of(Measure.ofPoints(named));
  }

  /** Red, green and blue in one number, or {@link #TRANSPARENT}. */
  static Optional<Integer> colour(Token token) {
    if (token.kind() == Token.Kind.HASH) {
      return hash(token.text());
    } else if (token.kind() == Token.Kind.FUNCTION && token.text().equals("rgb")) {
      return rgb(token.inside());
    } else if (token.is("transparent")) {
      return Optional.of(TRANSPARENT);
    }
    return Optional.ofNullable(COLOURS.get(token.name()));
  }

  private static Optional<Integer> hash(String digits) {
    try {
      if (digits.length() == 3) {
        int value = Integer.parseInt(digits, 16);
        return Optional.of(
            (value >> 8) * 0x110000 + (value >> 4 & 0xF) * 0x1100 + (value & 0xF) * 0x11);
      }
      return digits.length() == 6 ? Optional.of(Integer.parseInt(digits, 16)) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static Optional<Integer> rgb(List<Token> tokens) {
    List<Token> parts = tokens.stream().filter(token -> !token.isSign(",")).toList();
    boolean fits =
        parts.size() == 3
            && parts.stream()
                .allMatch(
                    part ->
                        part.kind() == Token.Kind.NUMBER
                            && part.text().isEmpty()
                            && part.number() >= 0
                            && part.number() <= 255);
    return fits
        ? Optional.of(
            (int) parts.get(0).number() << 16
                | (int) parts.get(1).number() << 8
                | (int) parts.get(2).number())
        : Optional.empty();
  }

  /** What {@code content} says; nothing if it says what we can't write. */
  static Optional<List<Content>> content(List<Token> tokens) {
    List<Content> parts = new ArrayList<>();
    if (tokens.size() == 1 && (tokens.get(0).is("none") || tokens.get(0).is("normal"))) {
      return Optional.of(parts);
    }
    for (Token token : tokens) {
      Optional<Content> part = contentPart(token);
      if (part.isEmpty()) {
        return Optional.empty();
      }
      parts.add(part.get());
    }
    return Optional.of(parts);
  }

  private static Optional<Content> contentPart(Token token) {
    if (token.kind() == Token.Kind.STRING) {
      return Optional.of(new Content.Text(token.text()));
    } else if (token.kind() != Token.Kind.FUNCTION || token.inside().isEmpty()) {
      return Optional.empty();
    }
    Token first = token.inside().get(0);
    boolean alone = token.inside().size() == 1;
    return switch (token.text()) {
      case "counter" ->
          alone && (first.is("page") || first.is("pages"))
              ? Optional.of(new Content.Counter(first.is("pages")))
              : Optional.empty();
      case "attr" ->
          alone && first.kind() == Token.Kind.NAME
              ? Optional.of(new Content.Attribute(first.name()))
              : Optional.empty();
      case "leader" ->
          alone && first.is("dotted") ? Optional.of(new Content.Leader()) : Optional.empty();
      case "target-counter" -> target(token.inside());
      default -> Optional.empty();
    };
  }

  private static Optional<Content> target(List<Token> inside) {
    boolean fits =
        inside.size() == 3
            && inside.get(0).kind() == Token.Kind.FUNCTION
            && inside.get(0).text().equals("attr")
            && inside.get(0).inside().size() == 1
            && inside.get(1).isSign(",")
            && inside.get(2).is("page");
    return fits
        ? Optional.of(new Content.TargetPage(inside.get(0).inside().get(0).name()))
        : Optional.empty();
  }
}
