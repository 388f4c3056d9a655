package wallbook.render;

import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import wallbook.wording.Wording;

/** The pages that documents are printed from, with their stylesheet, for other printers. */
public final class PrintedPages {
  private static final String FACES =
      face("Regular", "normal", 400)
          + face("Italic", "italic", 400)
          + face("Bold", "normal", 700)
          + face("BoldItalic", "italic", 700);

  private final TemplateSource source;
  private final Wording wording;

  public PrintedPages(TemplateSource source, Wording wording) {
    this.source = source;
    this.wording = wording;
  }

  /**
   * A page that a browser or another program prints as it stands. The font is expected beside it,
   * below {@code fonts}, or below {@code ../fonts}.
   *
   * @param html the page without a stylesheet, as a rendered document has it
   * @param template where the page says how it lies
   */
  public String whole(String html, String template, DocumentFacts facts) throws TemplateProblem {
    Templates templates = Templates.ofDocuments(source, wording);
    Theme theme = new Theme(source, templates, wording, HouseStyle.NONE);
    boolean landscape = source.read(template).contains("\npage: landscape");
    DocumentHead head =
        DocumentHead.of(template, landscape ? Map.of("page", "landscape") : Map.of(), facts);
    Document page = Jsoup.parse(html);
    page.head().appendElement("meta").attr("charset", "utf-8");
    page.head().appendElement("style").append(FACES + theme.stylesheet(head, facts));
    page.outputSettings().prettyPrint(false);
    return page.outerHtml();
  }

  private static String face(String file, String style, int weight) {
    return """
        @font-face { font-family: "Noto Sans"; font-style: %s; font-weight: %d;
          src: url("fonts/NotoSans-%s.ttf"), url("../fonts/NotoSans-%s.ttf"); }
        """
        .formatted(style, weight, file, file);
  }
}
