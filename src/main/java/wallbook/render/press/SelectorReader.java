package wallbook.render.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the selectors of a rule, and in which drawer of rules each is to be kept. */
final class SelectorReader {
  private static final Pattern NTH = Pattern.compile("(?:([+-]?\\d*)n)?\\s*([+-]?\\s*\\d+)?");
  private static final int ID = 10_000;
  private static final int CLASS = 100;

  private final Scanner scanner;
  private final String whole;
  private String drawer = "";
  private int specificity;
  private long names;
  private Selector.Pseudo pseudo = Selector.Pseudo.NONE;

  /**
   * A selector and what an element must have to come into question for it: {@code #id}, {@code
   * .class}, a tag's name, or nothing.
   */
  record Drawn(Selector selector, String drawer) {}

  private SelectorReader(String whole) {
    this.whole = whole;
    this.scanner = new Scanner(whole);
  }

  static List<Drawn> read(String selectors) throws StyleProblem {
    List<Drawn> all = new ArrayList<>();
    for (String one : selectors.split(",", -1)) {
      if (one.isBlank()) {
        throw new StyleProblem("a selector is missing", selectors);
      }
      all.add(new SelectorReader(one.strip()).selector());
    }
    return all;
  }

  private Drawn selector() throws StyleProblem {
    List<Selector.Step> written = new ArrayList<>();
    Selector.Relation relation = Selector.Relation.SELF;
    while (!scanner.atEnd()) {
      drawer = "";
      if (pseudo != Selector.Pseudo.NONE) {
        throw unknown();
      }
      names = 0;
      List<Selector.Test> tests = tests();
      written.add(0, new Selector.Step(Selector.Relation.SELF, tests, names));
      if (written.size() > 1) {
        // The relation belongs to the outer step, as seen from the inner one.
        Selector.Step inner = written.get(1);
        written.set(1, new Selector.Step(relation, inner.tests(), inner.names()));
      }
      relation = relation();
    }
    return new Drawn(new Selector(written, specificity, pseudo), drawer);
  }

  private Selector.Relation relation() throws StyleProblem {
    boolean space = Scanner.isSpace(scanner.peek());
    scanner.skipSpace();
    Selector.Relation relation =
        switch (scanner.peek()) {
          case '>' -> Selector.Relation.PARENT;
          case '+' -> Selector.Relation.PREVIOUS;
          case '~' -> Selector.Relation.ANY_PREVIOUS;
          default -> Selector.Relation.ANCESTOR;
        };
    if (relation != Selector.Relation.ANCESTOR) {
      scanner.take(scanner.peek());
      scanner.skipSpace();
      if (scanner.atEnd()) {
        throw unknown();
      }
    } else if (!space && !scanner.atEnd()) {
      throw unknown();
    }
    return relation;
  }

  private List<Selector.Test> tests() throws StyleProblem {
    List<Selector.Test> tests = new ArrayList<>();
    boolean any = scanner.take('*');
    String tag = any ? "" : scanner.name().toLowerCase(Locale.ROOT);
    if (!tag.isEmpty()) {
      specificity++;
      drawer = tag;
      names |= Selector.bit(tag);
      tests.add(branch -> branch.element().normalName().equals(tag));
    }
    boolean more = true;
    while (more) {
      if (scanner.take('.')) {
        String name = name();
        specificity += CLASS;
        names |= Selector.bit(name);
        drawer = drawer.startsWith("#") ? drawer : "." + name;
        tests.add(branch -> branch.element().hasClass(name));
      } else if (scanner.take('#')) {
        String id = name();
        specificity += ID;
        drawer = "#" + id;
        tests.add(branch -> branch.element().id().equals(id));
      } else if (scanner.take('[')) {
        specificity += CLASS;
        tests.add(attribute());
      } else if (scanner.take(':')) {
        pseudo(tests);
      } else {
        more = false;
      }
    }
    if (!any && tests.isEmpty() && pseudo == Selector.Pseudo.NONE) {
      throw unknown();
    }
    return tests;
  }

  private Selector.Test attribute() throws StyleProblem {
    scanner.skipSpace();
    String name = name().toLowerCase(Locale.ROOT);
    scanner.skipSpace();
    if (scanner.take(']')) {
      return branch -> branch.element().hasAttr(name);
    }
    char kind = scanner.peek();
    if (kind != '=') {
      scanner.take(kind);
    }
    if ("=~^$*|".indexOf(kind) < 0 || !scanner.take('=')) {
      throw unknown();
    }
    String value = scanner.upTo("]").strip();
    if (!scanner.take(']')) {
      throw unknown();
    }
    boolean quoted = value.length() > 1 && value.matches("\".*\"|'.*'");
    String wanted = quoted ? value.substring(1, value.length() - 1) : value;
    return branch -> has(branch.element().attr(name), kind, wanted);
  }

  private static boolean has(String value, char kind, String wanted) {
    return switch (kind) {
      case '=' -> value.equals(wanted);
      case '~' -> List.of(value.split("\\s+")).contains(wanted);
      case '^' -> !wanted.isEmpty() && value.startsWith(wanted);
      case '$' -> !wanted.isEmpty() && value.endsWith(wanted);
      case '*' -> !wanted.isEmpty() && value.contains(wanted);
      default -> value.equals(wanted) || value.startsWith(wanted + "-");
    };
  }

  private void pseudo(List<Selector.Test> tests) throws StyleProblem {
    scanner.take(':');
    String name = scanner.name().toLowerCase(Locale.ROOT);
    switch (name) {
      case "before" -> pseudo = Selector.Pseudo.BEFORE;
      case "after" -> pseudo = Selector.Pseudo.AFTER;
      case "first-child" -> tests.add(branch -> branch.number() == 1);
      case "last-child" -> tests.add(branch -> branch.element().nextElementSibling() == null);
      case "nth-child" -> tests.add(nth());
      default -> throw unknown();
    }
    specificity += pseudo == Selector.Pseudo.NONE ? CLASS : 1;
  }

  private Selector.Test nth() throws StyleProblem {
    if (!scanner.take('(')) {
      throw unknown();
    }
    String written = scanner.upTo(")").strip().toLowerCase(Locale.ROOT);
    scanner.take(')');
    String formula = written.equals("odd") ? "2n+1" : written.equals("even") ? "2n" : written;
    Matcher parts = NTH.matcher(formula);
    if (formula.isEmpty() || !parts.matches()) {
      throw unknown();
    }
    String factor = parts.group(1);
    int every =
        factor == null
            ? 0
            : factor.isEmpty() || factor.equals("+")
                ? 1
                : factor.equals("-") ? -1 : Integer.parseInt(factor);
    int from =
        parts.group(2) == null ? 0 : Integer.parseInt(parts.group(2).replaceAll("[\\s+]", ""));
    return branch -> {
      int off = branch.number() - from;
      return every == 0 ? off == 0 : off % every == 0 && off / every >= 0;
    };
  }

  private String name() throws StyleProblem {
    String name = scanner.name();
    if (name.isEmpty()) {
      throw unknown();
    }
    return name;
  }

  private StyleProblem unknown() {
    return new StyleProblem("the selector '" + whole + "' is not known here", whole);
  }
}
