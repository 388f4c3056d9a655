package wallbook.render.press;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads stylesheets whole: rules, {@code @page} and {@code @media print}. */
final class StyleSheetReader {
  private static final Set<String> MARGIN_BOXES =
      Set.of("top-left", "top-center", "top-right", "bottom-left", "bottom-center", "bottom-right");
  private static final Set<String> OF_A_PAGE =
      Set.of("margin", "padding", "font-family", "color", "background-color");
  private static final String IMPORTANT = "!important";

  private final List<StyleSheet.Written> rules = new ArrayList<>();
  private final List<PageRule> pages = new ArrayList<>();

  /** Declarations, and those marked as important. */
  private record Block(List<Declaration> plain, List<Declaration> important) {}

  void read(String css, int origin) throws StyleProblem {
    Scanner scanner = new Scanner(css);
    rules(scanner, origin, true, false);
  }

  StyleSheet sheet() {
    return new StyleSheet(rules, pages);
  }

  private void rules(Scanner scanner, int origin, boolean wanted, boolean inside)
      throws StyleProblem {
    scanner.skipSpace();
    while (!scanner.atEnd() && !(inside && scanner.peek() == '}')) {
      if (scanner.take('@')) {
        at(scanner, origin, wanted);
      } else {
        rule(scanner, origin, wanted);
      }
      scanner.skipSpace();
    }
  }

  private void at(Scanner scanner, int origin, boolean wanted) throws StyleProblem {
    String name = scanner.name().toLowerCase(Locale.ROOT);
    if (name.equals("page")) {
      page(scanner);
    } else if (name.equals("media")) {
      String media = scanner.upTo("{;").strip().toLowerCase(Locale.ROOT);
      open(scanner);
      boolean printed = media.equals("print") || media.equals("all");
      if (!printed && !media.equals("screen")) {
        throw new StyleProblem("the medium '" + media + "' is not known here", "@media " + media);
      }
      rules(scanner, origin, wanted && printed, true);
      scanner.take('}');
    } else {
      String near = scanner.line();
      throw new StyleProblem("'@" + name + "' is not known here", near);
    }
  }

  private void rule(Scanner scanner, int origin, boolean wanted) throws StyleProblem {
    String selectors = scanner.upTo("{};").strip();
    if (scanner.peek() != '{') {
      throw new StyleProblem("a rule has no braces: '" + selectors + "'", selectors);
    }
    open(scanner);
    List<SelectorReader.Drawn> drawn = SelectorReader.read(selectors);
    Block block = declarations(scanner);
    for (SelectorReader.Drawn one : drawn) {
      checkContent(one.selector().pseudo(), block.plain(), selectors);
      checkContent(one.selector().pseudo(), block.important(), selectors);
    }
    if (!wanted) {
      return;
    }
    for (SelectorReader.Drawn one : drawn) {
      if (!block.plain().isEmpty()) {
        rules.add(new StyleSheet.Written(one, block.plain(), false, origin));
      }
      if (!block.important().isEmpty()) {
        rules.add(new StyleSheet.Written(one, block.important(), true, origin));
      }
    }
  }

  /** Content stands before or after an element, and counters in the margins of pages only. */
  private static void checkContent(
      Selector.Pseudo pseudo, List<Declaration> declarations, String selectors)
      throws StyleProblem {
    for (Declaration declaration : declarations) {
      if (declaration.property() == Property.CONTENT) {
        if (pseudo == Selector.Pseudo.NONE) {
          throw new StyleProblem(
              "'content' needs :before or :after: '" + selectors + "'", selectors);
        } else if (parts(declaration).stream().anyMatch(Content.Counter.class::isInstance)) {
          throw new StyleProblem("pages are counted in their margins only", selectors);
        }
      }
    }
  }

  private static List<?> parts(Declaration declaration) {
    return declaration.value() instanceof List<?> parts ? parts : List.of();
  }

  private static void checkMargin(List<Declaration> declarations, String box) throws StyleProblem {
    for (Declaration declaration : declarations) {
      boolean odd =
          declaration.property() == Property.CONTENT
              && !parts(declaration).stream()
                  .allMatch(
                      part -> part instanceof Content.Text || part instanceof Content.Counter);
      if (odd) {
        throw new StyleProblem("'@" + box + "' can hold strings and counters only", "@" + box);
      }
    }
  }

  private static void open(Scanner scanner) throws StyleProblem {
    if (!scanner.take('{')) {
      throw new StyleProblem("a '{' is missing", scanner.line());
    }
  }

  private static Block declarations(Scanner scanner) throws StyleProblem {
    Block block = new Block(new ArrayList<>(), new ArrayList<>());
    scanner.skipSpace();
    while (!scanner.take('}')) {
      Optional<Pair> pair = pair(scanner);
      if (pair.isPresent()) {
        List<Declaration> read = PropertyReader.read(pair.get().name(), pair.get().value());
        (pair.get().important() ? block.important() : block.plain()).addAll(read);
      }
      scanner.skipSpace();
    }
    return block;
  }

  /** The declarations of a {@code style} attribute. */
  static List<Declaration> inline(String style) throws StyleProblem {
    return declarations(new Scanner(style + "}")).plain();
  }

  private record Pair(String name, String value, boolean important) {}

  /** A property and its value, up to the semicolon; nothing where only a semicolon stands. */
  private static Optional<Pair> pair(Scanner scanner) throws StyleProblem {
    if (scanner.take(';')) {
      return Optional.empty();
    }
    String name = scanner.name().toLowerCase(Locale.ROOT);
    scanner.skipSpace();
    if (name.isEmpty() || !scanner.take(':')) {
      throw new StyleProblem("this is no property with its value", scanner.line());
    }
    String value = scanner.upTo(";}");
    if (scanner.atEnd()) {
      throw new StyleProblem("a '}' is missing", name + ":" + value);
    }
    scanner.take(';');
    boolean important = value.strip().endsWith(IMPORTANT);
    return Optional.of(new Pair(name, important ? value.replace(IMPORTANT, "") : value, important));
  }

  private void page(Scanner scanner) throws StyleProblem {
    scanner.skipSpace();
    String selector = scanner.upTo("{;").strip();
    open(scanner);
    String name = selector.replaceFirst(":.*", "").strip();
    String pseudo = selector.contains(":") ? selector.replaceFirst("[^:]*:", "").strip() : "";
    if (!name.matches("[a-zA-Z-]*") || !pseudo.isEmpty() && !pseudo.equals("first")) {
      throw new StyleProblem("the page '" + selector + "' is not known here", "@page " + selector);
    }
    List<Float> size = List.of();
    List<Declaration> own = new ArrayList<>();
    Map<String, List<Declaration>> margins = new LinkedHashMap<>();
    scanner.skipSpace();
    while (!scanner.take('}')) {
      if (scanner.take('@')) {
        String box = scanner.name().toLowerCase(Locale.ROOT);
        if (!MARGIN_BOXES.contains(box)) {
          throw new StyleProblem("'@" + box + "' is not known here", "@" + box);
        }
        scanner.skipSpace();
        open(scanner);
        List<Declaration> declared = declarations(scanner).plain();
        checkMargin(declared, box);
        margins.computeIfAbsent(box, b -> new ArrayList<>()).addAll(declared);
      } else {
        Optional<Pair> pair = pair(scanner);
        if (pair.isPresent() && pair.get().name().equals("size")) {
          size = size(pair.get().value());
        } else if (pair.isPresent()) {
          own.addAll(ofPage(pair.get()));
        }
      }
      scanner.skipSpace();
    }
    pages.add(new PageRule(name.toLowerCase(Locale.ROOT), !pseudo.isEmpty(), size, own, margins));
  }

  private static List<Declaration> ofPage(Pair pair) throws StyleProblem {
    String family = pair.name().replaceFirst("-(top|right|bottom|left)$", "");
    if (!OF_A_PAGE.contains(family)) {
      throw new StyleProblem(
          "a page has no '" + pair.name() + "' here", pair.name() + ":" + pair.value());
    }
    return PropertyReader.read(pair.name(), pair.value());
  }

  private static List<Float> size(String value) throws StyleProblem {
    List<Float> sides = new ArrayList<>();
    for (Token token : new Scanner(value).tokens()) {
      sides.add(Values.length(token).map(Measure::value).orElse(0f));
    }
    if (sides.size() != 2 || sides.get(0) <= 0 || sides.get(1) <= 0) {
      throw new StyleProblem("a page needs a width and a height with units", "size:" + value);
    }
    return sides;
  }
}
