package wallbook.render;

import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import wallbook.wording.Wording;

/** The tables of a page of HTML, printed as documents are: laid out, tagged, framed and sealed. */
public final class PrintedTables {
  private final PdfPrinter printer = new PdfPrinter();
  private final Theme theme;
  private final PdfPrinter.Copy copy;
  private final DocumentFacts facts;

  /**
   * @param html the page without a stylesheet
   * @param template its template
   */
  public PrintedTables(
      TemplateSource source, Wording wording, String html, String template, DocumentFacts facts)
      throws TemplateProblem {
    this.facts = facts;
    this.theme =
        new Theme(source, Templates.ofDocuments(source, wording), wording, HouseStyle.NONE);
    Document page = Jsoup.parse(html);
    Elements tables = page.select("table");
    page.body().empty();
    Element around = page.body().appendElement("div").addClass("compact");
    around.appendChildren(tables);
    around.select("a").unwrap();
    DocumentHead head = DocumentHead.of(template, Map.of("page", "landscape"), facts);
    this.copy =
        new PdfPrinter.Copy(template, page, theme.stylesheet(head, facts), Map.of(), List.of());
  }

  /** The file. */
  public byte[] print() {
    try {
      return printer.print("tables.pdf", () -> copy, theme, facts, List.of()).pdf();
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }
}
