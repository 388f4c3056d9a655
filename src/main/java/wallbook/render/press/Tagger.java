package wallbook.render.press;

import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.jsoup.nodes.Element;
import wallbook.render.Tag;

/** Knows which element of the structure an element of the page is. */
final class Tagger {
  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry("p", "P"),
          Map.entry("pre", "P"),
          Map.entry("dt", "P"),
          Map.entry("dd", "P"),
          Map.entry("h1", "H1"),
          Map.entry("h2", "H2"),
          Map.entry("h3", "H3"),
          Map.entry("h4", "H4"),
          Map.entry("h5", "H5"),
          Map.entry("h6", "H6"),
          Map.entry("div", "Div"),
          Map.entry("section", "Sect"),
          Map.entry("article", "Sect"),
          Map.entry("blockquote", "BlockQuote"),
          Map.entry("ul", "L"),
          Map.entry("ol", "L"),
          Map.entry("li", "LI"),
          Map.entry("table", "Table"),
          Map.entry("caption", "Caption"),
          Map.entry("figcaption", "Caption"),
          Map.entry("thead", "THead"),
          Map.entry("tbody", "TBody"),
          Map.entry("tfoot", "TFoot"),
          Map.entry("tr", "TR"),
          Map.entry("th", "TH"),
          Map.entry("td", "TD"));

  private static final COSName SCOPE = COSName.getPDFName("Scope");
  private static final COSName ROW_SPAN = COSName.getPDFName("RowSpan");
  private static final COSName COLUMN_SPAN = COSName.getPDFName("ColSpan");

  private final Map<String, COSDictionary> scopes =
      Map.of("Column", table(SCOPE, "Column"), "Row", table(SCOPE, "Row"));

  /** The tag of a block below another; the other itself if the element has none of its own. */
  Tag block(Element element, Tag parent) {
    String type = TYPES.get(element.normalName());
    if (element.normalName().equals("div") && element.hasClass("caption")) {
      type = "Caption";
    }
    // A list inside the table of contents is part of it.
    if ("L".equals(type) && isOfContents(element)) {
      type = "TOC";
    } else if ("LI".equals(type) && parent.type().equals("TOC")) {
      type = "TOCI";
    }
    return type == null ? parent : new Tag(parent, type);
  }

  private static boolean isOfContents(Element list) {
    Element around = list.parent();
    return around != null && around.hasClass("contents");
  }

  /** The tag of a cell. */
  Tag cell(Element element, Tag row, int columns, int rows) {
    boolean head = element.normalName().equals("th");
    Tag tag = new Tag(row, head ? "TH" : "TD");
    if (columns > 1 || rows > 1) {
      COSDictionary spans = table(COSName.O, "Table");
      if (head) {
        spans.setName(SCOPE, scope(element));
      }
      if (columns > 1) {
        spans.setItem(COLUMN_SPAN, COSInteger.get(columns));
      }
      if (rows > 1) {
        spans.setItem(ROW_SPAN, COSInteger.get(rows));
      }
      tag.attributes(spans);
    } else if (head) {
      tag.attributes(scopes.get(scope(element)));
    }
    return tag;
  }

  private static String scope(Element head) {
    return head.attr("scope").startsWith("row") ? "Row" : "Column";
  }

  private static COSDictionary table(COSName key, String value) {
    COSDictionary attributes = new COSDictionary();
    attributes.setName(COSName.O, "Table");
    attributes.setName(key, value);
    return attributes;
  }

  /** What tells where a figure is: its corners in points from the page's lower left. */
  static COSDictionary box(float left, float bottom, float right, float top) {
    COSDictionary box = new COSDictionary();
    box.setName(COSName.O, "Layout");
    box.setName(COSName.getPDFName("Placement"), "Block");
    COSArray corners = new COSArray();
    for (float corner : new float[] {left, bottom, right, top}) {
      corners.add(Numbers.of(corner));
    }
    box.setItem(COSName.BBOX, corners);
    return box;
  }
}
