package wallbook.render.press;

import java.util.Optional;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/**
 * An element of the structure that a reader program is told of (ISO 32000-1, 14.7). It comes into
 * the file when something of it is first written.
 */
final class Tag {
  private final Tag parent;
  private final String type;
  private final String alternative;
  private COSBase attributes;
  private COSDictionary element;

  /**
   * @param parent the element around, or null for the root
   * @param alternative what is read out in place of the content; empty for the content itself
   */
  Tag(Tag parent, String type, String alternative) {
    this.parent = parent;
    this.type = type;
    this.alternative = alternative;
  }

  Tag(Tag parent, String type) {
    this(parent, type, "");
  }

  Tag parent() {
    return parent;
  }

  String type() {
    return type;
  }

  String alternative() {
    return alternative;
  }

  Optional<COSBase> attributes() {
    return Optional.ofNullable(attributes);
  }

  void attributes(COSBase known) {
    this.attributes = known;
    if (element != null) {
      element.setItem(COSName.A, known);
    }
  }

  /** What it is in the file; null until something of it is written. */
  COSDictionary element() {
    return element;
  }

  void element(COSDictionary written) {
    this.element = written;
  }

  /** Whether text may stand right in it; else the text needs a paragraph. */
  boolean holdsText() {
    return switch (type) {
      case "Document", "Div", "Sect", "BlockQuote", "L", "LI", "Table", "TBody", "TR", "TOC" ->
          false;
      default -> true;
    };
  }
}
