package wallbook.render.press;

/** A part of what a stylesheet writes before or after an element, or in the margin of a page. */
sealed interface Content {
  record Text(String text) implements Content {}

  /** The number of the page, or of all pages. */
  record Counter(boolean ofAll) implements Content {}

  record Attribute(String name) implements Content {}

  /** Dots up to what follows. */
  record Leader() implements Content {}

  /** The number of the page that an attribute of the element leads to. */
  record TargetPage(String attribute) implements Content {}
}
