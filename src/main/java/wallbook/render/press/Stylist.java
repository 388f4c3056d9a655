package wallbook.render.press;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;

/**
 * Finds the style of each element of one document. Elements that the same rules fit below the same
 * style share one.
 */
final class Stylist {
  private final StyleSheet sheet;
  private final Map<Key, Style> known = new HashMap<>();
  private final IdentityHashMap<Style, Integer> numbers = new IdentityHashMap<>();
  private final Map<String, List<Declaration>> inline = new HashMap<>();
  private Rule[] fitting = new Rule[64];
  private int[] ranks = new int[64];
  private int count;
  private float rootPt;

  /** What a style follows from. */
  private static final class Key {
    private final int parent;
    private final Selector.Pseudo pseudo;
    private final String own;
    private final int[] ranks;

    private Key(int parent, Selector.Pseudo pseudo, String own, int[] ranks) {
      this.parent = parent;
      this.pseudo = pseudo;
      this.own = own;
      this.ranks = ranks;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key
          && parent == key.parent
          && pseudo == key.pseudo
          && own.equals(key.own)
          && Arrays.equals(ranks, key.ranks);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * parent + own.hashCode()) + Arrays.hashCode(ranks);
    }
  }

  Stylist(StyleSheet sheet) {
    this.sheet = sheet;
    this.rootPt = Cascade.ABOVE.type().size();
  }

  /** Gives an element its style; the one around must have its own. */
  Style style(Branch branch) throws StyleProblem {
    Style parent = branch.parent() == null ? Cascade.ABOVE : branch.parent().style();
    collect(branch, Selector.Pseudo.NONE);
    Style style = find(parent, Selector.Pseudo.NONE, own(branch.element()));
    branch.style(style);
    if (branch.parent() == null) {
      rootPt = style.type().size();
    }
    return style;
  }

  /** The style of what is written before or after an element that has its style; if anything is. */
  Optional<Style> pseudo(Branch branch, Selector.Pseudo pseudo) throws StyleProblem {
    collect(branch, pseudo);
    if (count == 0) {
      return Optional.empty();
    }
    Style style = find(branch.style(), pseudo, "");
    return style.content().isEmpty() ? Optional.empty() : Optional.of(style);
  }

  /** The style of something that has declarations of its own, such as a box in a page's margin. */
  Style plain(Style parent, List<Declaration> declarations) {
    return Cascade.of(parent, declarations, rootPt);
  }

  private static String own(Element element) {
    return element.attributesSize() == 0 ? "" : element.attr("style");
  }

  /** The style that the rules at hand give below another. */
  private Style find(Style parent, Selector.Pseudo pseudo, String own) throws StyleProblem {
    Key key = new Key(number(parent), pseudo, own, Arrays.copyOf(ranks, count));
    Style style = known.get(key);
    if (style == null) {
      style = Cascade.of(parent, declarations(own), rootPt);
      known.put(key, style);
    }
    return style;
  }

  /** Looks for the rules that fit an element, weak ones first. */
  private void collect(Branch branch, Selector.Pseudo pseudo) {
    count = 0;
    Map<String, List<Rule>> drawers = sheet.drawers(pseudo);
    if (drawers.isEmpty()) {
      return;
    }
    Element element = branch.element();
    collect(branch, drawers.get(""));
    collect(branch, drawers.get(element.normalName()));
    if (element.attributesSize() > 0) {
      for (String name : branch.classes()) {
        collect(branch, drawers.get("." + name));
      }
      if (element.hasAttr("id")) {
        collect(branch, drawers.get("#" + element.id()));
      }
    }
    for (int i = 0; i < count; i++) {
      ranks[i] = fitting[i].rank();
    }
  }

  private void collect(Branch branch, List<Rule> drawer) {
    if (drawer == null) {
      return;
    }
    for (int i = 0; i < drawer.size(); i++) {
      Rule rule = drawer.get(i);
      if (rule.selector().fits(branch)) {
        insert(rule);
      }
    }
  }

  /** Puts a rule where it belongs by its rank; nearly all come in that order. */
  private void insert(Rule rule) {
    if (count == fitting.length) {
      fitting = Arrays.copyOf(fitting, count * 2);
      ranks = new int[count * 2];
    }
    int at = count++;
    while (at > 0 && fitting[at - 1].rank() > rule.rank()) {
      fitting[at] = fitting[at - 1];
      at--;
    }
    fitting[at] = rule;
  }

  private List<Declaration> declarations(String own) throws StyleProblem {
    List<Declaration> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (!fitting[i].important()) {
        all.addAll(fitting[i].declarations());
      }
    }
    if (!own.isEmpty()) {
      List<Declaration> read = inline.get(own);
      if (read == null) {
        read = inline(own);
        inline.put(own, read);
      }
      all.addAll(read);
    }
    for (int i = 0; i < count; i++) {
      if (fitting[i].important()) {
        all.addAll(fitting[i].declarations());
      }
    }
    return all;
  }

  private static List<Declaration> inline(String own) throws StyleProblem {
    try {
      return StyleSheetReader.inline(own);
    } catch (StyleProblem problem) {
      throw StyleProblem.ofPage(problem.getMessage(), "style=\"" + own + "\"");
    }
  }

  /** A number for a style, so that keys are compared quickly. */
  private int number(Style style) {
    Integer number = numbers.get(style);
    if (number == null) {
      number = numbers.size();
      numbers.put(style, number);
    }
    return number;
  }
}
