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
  private final boolean hasPseudo;
  private Rule[] fitting = new Rule[64];
  private int count;
  private float rootPt;

  private record Key(int parent, Selector.Pseudo pseudo, String inline, List<Integer> ranks) {}

  Stylist(StyleSheet sheet) {
    this.sheet = sheet;
    this.hasPseudo = sheet.hasPseudo();
    this.rootPt = Cascade.ABOVE.type().size();
  }

  /** Gives an element its style; the one around must have its own. */
  Style style(Branch branch) throws StyleProblem {
    Style parent = branch.parent() == null ? Cascade.ABOVE : branch.parent().style();
    Style style = find(branch, parent, Selector.Pseudo.NONE);
    branch.style(style);
    if (branch.parent() == null) {
      rootPt = style.type().size();
    }
    return style;
  }

  /** The style of what is written before or after an element that has its style; if anything is. */
  Optional<Style> pseudo(Branch branch, Selector.Pseudo pseudo) throws StyleProblem {
    if (!hasPseudo) {
      return Optional.empty();
    }
    Style style = find(branch, branch.style(), pseudo);
    return style.content().isEmpty() ? Optional.empty() : Optional.of(style);
  }

  /** The style of something that has declarations of its own, such as a box in a page's margin. */
  Style plain(Style parent, List<Declaration> declarations) {
    return Cascade.of(parent, declarations, rootPt);
  }

  private Style find(Branch branch, Style parent, Selector.Pseudo pseudo) throws StyleProblem {
    Element element = branch.element();
    count = 0;
    collect(branch, pseudo, "");
    collect(branch, pseudo, element.normalName());
    if (element.hasAttr("class")) {
      for (String name : element.attr("class").split(" ")) {
        if (!name.isEmpty()) {
          collect(branch, pseudo, "." + name);
        }
      }
    }
    if (element.hasAttr("id")) {
      collect(branch, pseudo, "#" + element.id());
    }
    Arrays.sort(fitting, 0, count, (a, b) -> Integer.compare(a.rank(), b.rank()));
    String own = pseudo == Selector.Pseudo.NONE ? element.attr("style") : "";
    List<Integer> ranks = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      ranks.add(fitting[i].rank());
    }
    Key key = new Key(number(parent), pseudo, own, ranks);
    Style style = known.get(key);
    if (style == null) {
      style = Cascade.of(parent, declarations(own), rootPt);
      known.put(key, style);
    }
    return style;
  }

  private void collect(Branch branch, Selector.Pseudo pseudo, String drawer) {
    for (Rule rule : sheet.drawer(drawer)) {
      if (rule.selector().pseudo() == pseudo && rule.selector().fits(branch)) {
        if (count == fitting.length) {
          fitting = Arrays.copyOf(fitting, count * 2);
        }
        fitting[count++] = rule;
      }
    }
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
