package wallbook.render.press;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import wallbook.render.Figure;
import wallbook.render.Heading;
import wallbook.render.Tag;

/**
 * Prints one page of HTML into a PDF: pages with their content, structure tree, links and
 * bookmarks. The same input gives the same file.
 */
public final class Press {
  private static final int BOOKMARK_LEVELS = 3;

  private final Book book;

  private Press(PDDocument pdf) {
    this.book = new Book(pdf);
  }

  /**
   * @param pdf an empty file
   * @param page the page, without its stylesheet
   * @param sheet the stylesheet
   * @param figures what the {@code svg} and {@code img} elements of the page stand for; a picture
   *     whose data are in the page needs no entry
   * @param headings what bookmarks lead to
   * @throws StyleProblem if the stylesheet or the page asks for what we can't print
   */
  public static void print(
      PDDocument pdf,
      Document page,
      StyleSheet sheet,
      Map<Element, Figure> figures,
      List<Heading> headings)
      throws IOException, StyleProblem {
    Locale language = Locale.forLanguageTag(page.firstElementChild().attr("lang"));
    Press press = new Press(pdf);
    press.print(page, new Workshop(sheet, figures, language), sheet);
    press.bookmarks(headings);
    press.book.finish();
  }

  private void print(Document page, Workshop shop, StyleSheet sheet) throws StyleProblem {
    Branch root = new Branch(null, page.firstElementChild(), 1);
    Sheets sheets = new Sheets(sheet, shop.stylist(), shop.stylist().style(root));
    PagePrinter printer = new PagePrinter(book, sheets);
    Pager pager = new Pager(sheets, printer);
    Tag document = new Tag(null, "Document");
    Flow flow = new Flow(pager);
    new BlockLayout(shop, sheets, flow)
        .block(root, document, 0, sheets.named("").content().width());
    if (flow.isEmpty()) {
      flow.add(new Body.Blank(0), 0);
    }
    pager.finish();
    printer.finish(new MarginPrinter(shop, sheets, book.pages()));
  }

  private void bookmarks(List<Heading> headings) {
    Deque<PDOutlineNode> parents = new ArrayDeque<>();
    Deque<Integer> levels = new ArrayDeque<>(List.of(0));
    PDDocumentOutline outline = new PDDocumentOutline();
    parents.push(outline);
    for (Heading heading : headings) {
      if (heading.level() > BOOKMARK_LEVELS) {
        continue;
      }
      while (levels.element() >= heading.level()) {
        levels.pop();
        parents.pop();
      }
      PDOutlineItem bookmark = new PDOutlineItem();
      bookmark.setTitle(heading.text());
      COSDictionary dictionary = bookmark.getCOSObject();
      book.anchors().lead(dictionary, heading.id());
      parents.element().addLast(bookmark);
      parents.push(bookmark);
      levels.push(heading.level());
    }
    if (outline.hasChildren()) {
      book.pdf()
          .getDocumentCatalog()
          .getCOSObject()
          .setItem(COSName.OUTLINES, outline.getCOSObject());
    }
  }
}
