package wallbook.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The floor that printing is held against: rows and rules drawn straight by the PDF library with an
 * embedded font; no layout, no line breaks, no tags, no bookmarks.
 */
final class RowsFloor {
  private static final float MARGIN = 40;
  private static final float LEADING = 12;
  private static final float SIZE = 8;

  byte[] draw(Rows rows) {
    try (PDDocument pdf = new PDDocument();
        InputStream file =
            RowsFloor.class.getResourceAsStream("/wallbook/fonts/NotoSans-Regular.ttf")) {
      PDFont font = PDType0Font.load(pdf, file);
      List<List<String>> left = rows.rows();
      while (!left.isEmpty()) {
        left = page(pdf, font, left);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      pdf.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Draws one page and gives the rows that did not fit. */
  private static List<List<String>> page(PDDocument pdf, PDFont font, List<List<String>> rows)
      throws IOException {
    PDPage page = new PDPage(PDRectangle.LETTER);
    pdf.addPage(page);
    float width = page.getMediaBox().getWidth() - 2 * MARGIN;
    float y = page.getMediaBox().getHeight() - MARGIN;
    int drawn = 0;
    try (PDPageContentStream pen = new PDPageContentStream(pdf, page)) {
      while (drawn < rows.size() && y > MARGIN) {
        y -= LEADING;
        row(pen, font, rows.get(drawn), width, y);
        drawn++;
      }
    }
    return rows.subList(drawn, rows.size());
  }

  private static void row(
      PDPageContentStream pen, PDFont font, List<String> cells, float width, float y)
      throws IOException {
    for (int i = 0; i < cells.size(); i++) {
      pen.beginText();
      pen.setFont(font, SIZE);
      pen.newLineAtOffset(MARGIN + i * width / cells.size(), y);
      pen.showText(cells.get(i));
      pen.endText();
    }
    pen.moveTo(MARGIN, y - 3);
    pen.lineTo(MARGIN + width, y - 3);
    pen.stroke();
  }
}
