package wallbook.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import wallbook.render.press.Press;
import wallbook.render.press.StyleProblem;
import wallbook.render.press.StyleSheet;

/**
 * Prints an HTML page as a PDF that claims, and is tested to keep, PDF/UA-1 and PDF/A-3a: tagged,
 * with the font embedded, bookmarks of the headings, and the same bytes for the same input.
 */
final class PdfPrinter {
  private final Fonts fonts = new Fonts();
  private final ColourProfile colours = new ColourProfile();

  /**
   * A page to be printed.
   *
   * @param template whom to blame for what can't be printed
   * @param page a whole page, without a stylesheet
   * @param stylesheet the stylesheet as text
   * @param figures what the picture elements of the page stand for
   * @param headings for the bookmarks
   */
  record Copy(
      String template,
      Document page,
      String stylesheet,
      Map<Element, Figure> figures,
      List<Heading> headings) {}

  /**
   * @param theme whom to ask for the place of a mistake in the stylesheet
   */
  byte[] print(Copy copy, Theme theme, DocumentFacts facts, List<Attachment> attachments)
      throws TemplateProblem {
    try (PDDocument pdf = new PDDocument()) {
      Document page = copy.page();
      String description = page.head().select("meta[name=description]").attr("content");
      ArchiveFrame.put(pdf, page.title(), Optional.of(description), facts, colours);
      Press.print(pdf, page, StyleSheet.read(copy.stylesheet()), copy.figures(), copy.headings());
      PdfFinish finish = new PdfFinish(pdf, facts);
      finish.attach(attachments);
      finish.fixIdentity(page.title(), attachments);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      pdf.save(out);
      return PdfSeal.seal(out.toByteArray());
    } catch (StyleProblem problem) {
      throw problem.isOfPage()
          ? new TemplateProblem(copy.template(), 0, 0, problem.getMessage(), problem)
          : theme.problem(problem);
    } catch (IOException e) {
      throw new UncheckedIOException("PDF of " + copy.template(), e);
    }
  }

  /** The characters of a page and its drawings that the font lacks. */
  SortedSet<Integer> unprintable(Document page, Collection<Figure> figures) {
    StringBuilder text = new StringBuilder(page.text());
    for (Figure figure : figures) {
      if (figure instanceof Figure.Drawing drawing) {
        drawing.painting().paintWith(new PaintedWords(text));
      }
    }
    return fonts.missing(text.toString());
  }
}
