package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.jsoup.Jsoup;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wallbook.compose.drawing.Drawing;
import wallbook.render.Documents;
import wallbook.render.PaperSize;
import wallbook.render.PdfPages;
import wallbook.render.PdfParts;
import wallbook.render.PlanFigures;
import wallbook.render.TaggedText;
import wallbook.render.VeraPdf;

/** A drawing of ours, set in a document. */
class DrawingInDocumentTest {
  record View(List<Drawing> drawings) {}

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void everyKindOfDrawingIsPrintedInsideTheMarginsWithItsText(PaperSize paper) throws Exception {
    List<Drawing> drawings = SampleDrawings.all();
    String template =
        """
        ---
        cover: none
        ---

        <#list view.drawings as drawing>
        <@block.figure drawing>
        Caption ${drawing?counter}.
        </@block.figure>

        </#list>
        """;
    byte[] pdf =
        new Documents(folder)
            .with(new PlanFigures())
            .render(template, new View(drawings), Documents.onPaper(paper))
            .pdf();
    VeraPdf.assertAccessibleArchive(pdf);
    PdfPages pages = PdfPages.of(pdf);
    pages.assertNoneBlank();
    pages.assertInkInsideMargins();
    try (PdfParts parts = new PdfParts(pdf)) {
      assertEquals(
          drawings.stream().map(drawing -> drawing.frame().altText()).toList(),
          parts.tagged("Figure").stream().map(tag -> tag.getString(COSName.ALT)).toList());
      parts.embeddedFonts();
      // What the SVG shows as text is text in the PDF too, and can be searched.
      String text = TaggedText.of(parts.document());
      for (Drawing drawing : drawings) {
        Jsoup.parse(new DrawingSvg().svg(drawing), "", Parser.xmlParser())
            .select("text")
            .forEach(words -> assertTrue(text.contains(words.wholeText()), words::outerHtml));
      }
    }
  }
}
