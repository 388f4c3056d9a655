package wallbook.render.press;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rules of stylesheets, those that come later being stronger among equals. */
public final class StyleSheet {
  private final Map<Selector.Pseudo, Map<String, List<Rule>>> drawers =
      new EnumMap<>(Selector.Pseudo.class);
  private final List<PageRule> pages;

  /**
   * Rules in the order of their strength.
   *
   * @param rules as written
   */
  StyleSheet(List<Written> rules, List<PageRule> pages) {
    this.pages = List.copyOf(pages);
    List<Written> ordered = new ArrayList<>(rules);
    ordered.sort(
        Comparator.comparing(Written::important)
            .thenComparingInt(Written::origin)
            .thenComparingInt(rule -> rule.drawn().selector().specificity()));
    for (int rank = 0; rank < ordered.size(); rank++) {
      Written rule = ordered.get(rank);
      drawers
          .computeIfAbsent(rule.drawn().selector().pseudo(), pseudo -> new HashMap<>())
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

  /**
   * The rules of one kind, by the name that an element must have to come into question for them.
   */
  Map<String, List<Rule>> drawers(Selector.Pseudo pseudo) {
    return drawers.getOrDefault(pseudo, Map.of());
  }

  List<PageRule> pages() {
    return pages;
  }
}
