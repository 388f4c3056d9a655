package wallbook.render;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.SortedSet;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;
import org.w3c.dom.Element;

/**
 * Prints an HTML page as a PDF that claims, and is tested to keep, PDF/UA-1 and PDF/A-3a: tagged,
 * with the font embedded, bookmarks of the headings, and the same bytes for the same input.
 */
final class PdfPrinter {
  private static final int BOOKMARK_LEVELS = 3;

  /** Where links may lead; nothing is loaded but pictures that are in the page. */
  private static final Pattern ALLOWED = Pattern.compile("(#|data:image/|https?:|mailto:|tel:).*");

  /** Printed in place of a character that the font lacks. */
  private static final String UNPRINTABLE = "\uFFFD";

  private final Fonts fonts = new Fonts();
  private final ColourProfile colours = new ColourProfile();

  /**
   * @param template whom to blame for what can't be printed
   * @param page a whole page, with its stylesheet
   */
  byte[] print(
      String template,
      Document page,
      List<Heading> headings,
      DocumentFacts facts,
      List<Attachment> attachments)
      throws TemplateProblem {
    Document printed = page.clone();
    // openhtmltopdf 1.1.31 reads the target of a page number from an attribute named href only.
    printed.select("[data-page-of]").forEach(e -> e.attr("href", e.attr("data-page-of")));
    org.w3c.dom.Document dom = new W3CDom().fromJsoup(printed);
    addBookmarks(dom, headings);
    EngineLog log = new EngineLog();
    try (PDDocument pdf = new PDDocument()) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.usePDDocument(pdf);
      builder.withDiagnosticConsumer(log);
      builder.withW3cDocument(dom, "");
      builder.useReplacementText(UNPRINTABLE);
      builder.useUriResolver((base, uri) -> ALLOWED.matcher(uri).matches() ? uri : null);
      builder.useExternalResourceAccessControl(
          (uri, type) -> uri.startsWith("data:image/"),
          ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
      builder.useSVGDrawer(DrawingFonts.drawer(fonts));
      builder.usePdfUaAccessibility(true);
      builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
      builder.useColorProfile(colours.bytes());
      builder.withProducer("wallbook " + facts.generatorVersion());
      fonts.offer(pdf, builder);
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.createPDFWithoutClosing();
      }
      log.throwFirst(template);
      colours.restore(pdf);
      PdfFinish finish = new PdfFinish(pdf, facts);
      finish.dropEmptyFeet();
      finish.describeLinks();
      finish.attach(attachments);
      finish.fixIdentity(page.outerHtml(), attachments);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      pdf.save(out);
      return PdfSeal.seal(out.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException("PDF of " + template, e);
    }
  }

  /** The characters of a page that the font lacks. */
  SortedSet<Integer> unprintable(Document page) {
    return fonts.missing(page.text());
  }

  /** The engine reads bookmarks from an element of its own in the page's head. */
  private static void addBookmarks(org.w3c.dom.Document dom, List<Heading> headings) {
    Element bookmarks = dom.createElement("bookmarks");
    Deque<Element> parents = new ArrayDeque<>(List.of(bookmarks));
    Deque<Integer> levels = new ArrayDeque<>(List.of(0));
    for (Heading heading : headings) {
      if (heading.level() > BOOKMARK_LEVELS) {
        continue;
      }
      while (levels.element() >= heading.level()) {
        levels.pop();
        parents.pop();
      }
      Element bookmark = dom.createElement("bookmark");
      bookmark.setAttribute("name", heading.text());
      bookmark.setAttribute("href", "#" + heading.id());
      parents.element().appendChild(bookmark);
      parents.push(bookmark);
      levels.push(heading.level());
    }
    dom.getElementsByTagName("head").item(0).appendChild(bookmarks);
  }
}
