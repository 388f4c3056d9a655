package wallbook.render.press;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pages that a stylesheet knows: their measures, and what stands in their margins. */
final class Sheets {
  private static final float A4_WIDTH = 210 * Values.PT_PER_MM;
  private static final float A4_HEIGHT = 297 * Values.PT_PER_MM;

  private final List<PageRule> rules;
  private final Stylist stylist;
  private final Style root;
  private final Map<String, Geometry> known = new HashMap<>();

  /**
   * @param root style of the root element, which margins take theirs from
   */
  Sheets(StyleSheet sheet, Stylist stylist, Style root) {
    this.rules = sheet.pages();
    this.stylist = stylist;
    this.root = root;
  }

  /** The measures of the pages of a name; an unknown one has those of all pages. */
  Geometry named(String name) {
    return known.computeIfAbsent(name, this::measure);
  }

  private Geometry measure(String name) {
    float width = A4_WIDTH;
    float height = A4_HEIGHT;
    for (PageRule rule : fitting(name, false)) {
      if (!rule.size().isEmpty()) {
        width = rule.size().get(0);
        height = rule.size().get(1);
      }
    }
    BoxStyle box = page(name, false).box();
    float left = box.margin().get(BoxStyle.LEFT).of(width);
    float top = box.margin().get(BoxStyle.TOP).of(height);
    Geometry.Area area =
        new Geometry.Area(
            left,
            top,
            width - left - box.margin().get(BoxStyle.RIGHT).of(width),
            height - top - box.margin().get(BoxStyle.BOTTOM).of(height));
    float inLeft = box.padding().get(BoxStyle.LEFT).of(width);
    float inTop = box.padding().get(BoxStyle.TOP).of(height);
    Geometry.Area content =
        new Geometry.Area(
            area.left() + inLeft,
            area.top() + inTop,
            area.width() - inLeft - box.padding().get(BoxStyle.RIGHT).of(width),
            area.height() - inTop - box.padding().get(BoxStyle.BOTTOM).of(height));
    return new Geometry(width, height, content, area);
  }

  private Style page(String name, boolean first) {
    List<Declaration> all = new ArrayList<>();
    fitting(name, first).forEach(rule -> all.addAll(rule.declarations()));
    return stylist.plain(root, all);
  }

  /** The boxes in the margins of a page that hold anything, with their styles. */
  Map<String, Style> margins(String name, boolean first) {
    Map<String, List<Declaration>> boxes = new LinkedHashMap<>();
    for (PageRule rule : fitting(name, first)) {
      rule.margins()
          .forEach(
              (box, declarations) ->
                  boxes.computeIfAbsent(box, b -> new ArrayList<>()).addAll(declarations));
    }
    Style page = page(name, first);
    Map<String, Style> styles = new LinkedHashMap<>();
    boxes.forEach(
        (box, declarations) -> {
          Style style = stylist.plain(page, declarations);
          if (!style.content().isEmpty()) {
            styles.put(box, style);
          }
        });
    return styles;
  }

  /** Rules for all pages, then for those of a name, then for the first. */
  private List<PageRule> fitting(String name, boolean first) {
    List<PageRule> fitting = new ArrayList<>();
    for (int strength = 0; strength < 4; strength++) {
      for (PageRule rule : rules) {
        int own = (rule.name().isEmpty() ? 0 : 1) + (rule.first() ? 2 : 0);
        boolean fits =
            (rule.name().isEmpty() || rule.name().equals(name)) && (!rule.first() || first);
        if (own == strength && fits) {
          fitting.add(rule);
        }
      }
    }
    return fitting;
  }
}
