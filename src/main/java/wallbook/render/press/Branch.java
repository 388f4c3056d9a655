package wallbook.render.press;

import org.jsoup.nodes.Element;

/** An element of the page with what the stylesheet asks about where it stands, and its style. */
final class Branch {
  private final Branch parent;
  private final Element element;
  private final int number;
  private Style style;

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

  Style style() {
    return style;
  }

  void style(Style found) {
    this.style = found;
  }
}
