package wallbook.render;

import java.io.IOException;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/**
 * An element of the structure that a reader program is told of (ISO 32000-1, 14.7). It comes into
 * the file when something of it is first written.
 */
public final class Tag extends PdfObject {
  private static final COSBase[] NONE = {};

  private final Tag parent;
  private final String type;
  private final String alternative;
  private COSBase attributes;
  private COSBase around;
  private COSDictionary page;
  private COSBase[] kids = NONE;
  private int kidCount;

  /**
   * @param parent the element around, or null for the root
   * @param alternative what is read out in place of the content; empty for the content itself
   */
  public Tag(Tag parent, String type, String alternative) {
    this.parent = parent;
    this.type = type;
    this.alternative = alternative;
  }

  public Tag(Tag parent, String type) {
    this(parent, type, "");
  }

  public Tag parent() {
    return parent;
  }

  public String type() {
    return type;
  }

  public void attributes(COSBase known) {
    this.attributes = known;
  }

  /** Whether something of it is written. */
  boolean isInFile() {
    return around != null;
  }

  /**
   * Brings it into the file.
   *
   * @param outer the element around, or the root
   */
  void enter(COSBase outer) {
    around = outer;
  }

  /**
   * The page that its content is on unless it says otherwise, which is the first to have any.
   *
   * @param some a page that has some, and is it if none was before
   */
  COSDictionary page(COSDictionary some) {
    if (page == null) {
      page = some;
    }
    return page;
  }

  /** Adds an element within it, or content. */
  void add(COSBase kid) {
    if (kidCount == kids.length) {
      kids = Arrays.copyOf(kids, Math.max(1, kidCount * 2));
    }
    kids[kidCount++] = kid;
  }

  /** Whether text may stand right in it; else the text needs a paragraph. */
  public boolean holdsText() {
    return switch (type) {
      case "Document", "Div", "Sect", "BlockQuote", "L", "LI", "Table", "TBody", "TR", "TOC" ->
          false;
      default -> true;
    };
  }

  @Override
  public void tell(Entries entries) throws IOException {
    entries.entry(COSName.S, COSName.getPDFName(type));
    entries.entry(COSName.P, around);
    if (!alternative.isEmpty()) {
      entries.entry(COSName.ALT, new COSString(alternative));
    }
    if (attributes != null) {
      entries.entry(COSName.A, attributes);
    }
    if (page != null) {
      entries.entry(COSName.PG, page);
    }
    if (kidCount == 1) {
      entries.entry(COSName.K, kids[0]);
    } else if (kidCount > 1) {
      COSArray several = new COSArray();
      for (int i = 0; i < kidCount; i++) {
        several.add(kids[i]);
      }
      entries.entry(COSName.K, several);
    }
  }
}
