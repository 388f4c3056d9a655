package wallbook.render;

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
import org.jsoup.nodes.TextNode;
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

  /** Makes a page. */
  interface Source {
    Copy copy() throws TemplateProblem;
  }

  /**
   * @param source makes the page; it is let go before the file is written, which takes as much room
   *     again
   * @param theme whom to ask for the place of a mistake in the stylesheet
   */
  RenderedDocument print(
      String fileName,
      Source source,
      Theme theme,
      DocumentFacts facts,
      List<Attachment> attachments)
      throws TemplateProblem {
    try (PDDocument pdf = new PDDocument()) {
      SortedSet<Integer> unprintable = pages(pdf, source, theme, facts);
      PdfFinish finish = new PdfFinish(pdf, facts);
      finish.attach(attachments);
      finish.fixIdentity(fileName, attachments);
      return new RenderedDocument(fileName, PdfSeal.seal(PdfFile.of(pdf)), unprintable);
    } catch (IOException e) {
      throw new UncheckedIOException("PDF of " + fileName, e);
    }
  }

  /** Prints the pages; gives the characters that the font lacks. */
  private SortedSet<Integer> pages(PDDocument pdf, Source source, Theme theme, DocumentFacts facts)
      throws TemplateProblem, IOException {
    Copy copy = source.copy();
    Document page = copy.page();
    String description = page.head().select("meta[name=description]").attr("content");
    try {
      ArchiveFrame.put(pdf, page.title(), Optional.of(description), facts, colours);
      Press.print(pdf, page, StyleSheet.read(copy.stylesheet()), copy.figures(), copy.headings());
      return unprintable(page, copy.figures().values());
    } catch (StyleProblem problem) {
      throw problem.isOfPage()
          ? new TemplateProblem(copy.template(), 0, 0, problem.getMessage(), problem)
          : theme.problem(problem);
    }
  }

  private SortedSet<Integer> unprintable(Document page, Collection<Figure> figures) {
    StringBuilder text = new StringBuilder();
    page.traverse(
        (node, depth) -> {
          if (node instanceof TextNode words) {
            text.append(words.getWholeText());
          }
        });
    for (Figure figure : figures) {
      if (figure instanceof Figure.Drawing drawing) {
        drawing.painting().paintWith(new PaintedWords(text));
      }
    }
    return fonts.missing(text.toString());
  }
}
