package wallbook.render.press;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rules of stylesheets, those that come later being stronger among equals. */
public final class StyleSheet {
  private final Map<String, List<Rule>> drawers = new HashMap<>();
  private final List<PageRule> pages;
  private final boolean hasPseudo;

  /**
   * Rules in the order of their strength.
   *
   * @param rules as written
   */
  StyleSheet(List<Written> rules, List<PageRule> pages) {
    this.pages = List.copyOf(pages);
    this.hasPseudo =
        rules.stream().anyMatch(rule -> rule.drawn().selector().pseudo() != Selector.Pseudo.NONE);
    List<Written> ordered = new ArrayList<>(rules);
    ordered.sort(
        Comparator.comparing(Written::important)
            .thenComparingInt(Written::origin)
            .thenComparingInt(rule -> rule.drawn().selector().specificity()));
    for (int rank = 0; rank < ordered.size(); rank++) {
      Written rule = ordered.get(rank);
      drawers
          .computeIfAbsent(rule.drawn().drawer(), drawer -> new ArrayList<>())
          .add(new Rule(rule.drawn().selector(), rule.declarations(), rank, rule.important()));
    }
  }

  /**
   * A rule as it is written.
   *
   * @param origin 0 for the styles that all HTML has, 1 for the stylesheet
   */
  record Written(
      SelectorReader.Drawn drawn, List<Declaration> declarations, boolean important, int origin) {}

  /**
   * Reads a stylesheet.
   *
   * @throws StyleProblem if there is anything in it that we can't follow
   */
  public static StyleSheet read(String css) throws StyleProblem {
    StyleSheetReader reader = new StyleSheetReader();
    reader.read(HtmlStyles.TEXT, 0);
    reader.read(css, 1);
    return reader.sheet();
  }

  /** The rules that an element comes into question for by one of its names. */
  List<Rule> drawer(String name) {
    return drawers.getOrDefault(name, List.of());
  }

  /** Whether anything is written before or after elements. */
  boolean hasPseudo() {
    return hasPseudo;
  }

  List<PageRule> pages() {
    return pages;
  }
}
