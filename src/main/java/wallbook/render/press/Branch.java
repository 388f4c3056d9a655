package wallbook.render.press;

import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;

/** An element of the page with what the stylesheet asks about where it stands, and its style. */
final class Branch {
  private static final Pattern SPACE = Pattern.compile("\\s+");

  private final Branch parent;
  private final Element element;
  private final int number;
  private Style style;
  private long names;

  /**
   * @param parent the element around, or null for the root
   * @param number place among the elements that have the same parent, from 1
   */
  Branch(Branch parent, Element element, int number) {
    this.parent = parent;
    this.element = element;
    this.number = number;
  }

  /** The element around; null above the root. */
  Branch parent() {
    return parent;
  }

  Element element() {
    return element;
  }

  int number() {
    return number;
  }

  /** The element before among those that have the same parent; null for the first. */
  Branch previous() {
    Element before = element.previousElementSibling();
    return before == null ? null : new Branch(parent, before, number - 1);
  }

  /** {@linkplain Selector#bit Bits} of the tags and classes of all elements around. */
  long around() {
    return parent == null ? 0 : parent.names();
  }

  private long names() {
    if (names == 0) {
      names = around() | Selector.bit(element.normalName());
      for (String name : classes()) {
        names |= Selector.bit(name);
      }
    }
    return names;
  }

  /** The names of its classes. */
  List<String> classes() {
    String written = element.attributesSize() == 0 ? "" : element.attr("class");
    if (written.isBlank()) {
      return List.of();
    }
    // Splitting at a pattern takes its time, and most elements have one class.
    for (int i = 0; i < written.length(); i++) {
      if (Scanner.isSpace(written.charAt(i))) {
        return List.of(SPACE.split(written.strip()));
      }
    }
    return List.of(written);
  }

  Style style() {
    return style;
  }

  void style(Style found) {
    this.style = found;
  }
}
