package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WidePagesTest {
  private static final String TEMPLATE =
      """
      # Upright

      Text.

      <@block.wide>
      # Lying

      | A | B |
      | --- | --- |
      <#list view as line>
      | row ${line} begins | and here ${line} ends, after a text that is long enough to reach across the sheet |
      </#list>
      </@block.wide>

      # Upright again

      Text.
      """;

  @TempDir private Path folder;

  private byte[] pdf(PaperSize paper) throws TemplateProblem {
    return new Documents(folder)
        .render(TEMPLATE, IntStream.range(0, 60).boxed().toList(), Documents.onPaper(paper))
        .pdf();
  }

  @ParameterizedTest
  @EnumSource
  void aWidePartLiesOnItsLongSideAndFillsItsWidth(PaperSize paper)
      throws TemplateProblem, IOException {
    byte[] pdf = pdf(paper);
    PdfPages pages = PdfPages.of(pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertFalse(lies(document, 1));
      for (int page = 2; page < pages.count(); page++) {
        assertTrue(lies(document, page), "page " + page);
        PDRectangle box = document.getPage(page - 1).getMediaBox();
        double between = box.getWidth() * 25.4 / 72 - 30;
        assertEquals(between, pages.ink(page).width(), 1, "page " + page);
      }
      assertFalse(lies(document, pages.count()));
    }
    pages.assertInkInsideMargins();
    pages.assertNumbered();
  }

  @Test
  void noRowOfAWideTableIsSplitBetweenPages() throws TemplateProblem {
    PdfPages pages = PdfPages.of(pdf(PaperSize.LETTER));
    for (int row = 0; row < 60; row++) {
      int page = pages.pageWith("row " + row + " begins");
      assertTrue(page > 1 && pages.text(page).contains("here " + row + " ends"), "row " + row);
    }
  }

  private static boolean lies(PDDocument document, int page) {
    PDRectangle box = document.getPage(page - 1).getMediaBox();
    return box.getWidth() > box.getHeight();
  }
}
