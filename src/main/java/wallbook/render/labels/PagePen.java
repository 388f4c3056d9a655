package wallbook.render.labels;

import com.google.zxing.qrcode.encoder.ByteMatrix;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import wallbook.render.Face;

/** Draws on one page, in millimetres from its upper left corner, in black. */
final class PagePen implements AutoCloseable {
  private static final float PT_PER_MM = 72 / 25.4f;

  private final PDPageContentStream stream;
  private final float heightPt;
  private final Map<Face, PDFont> fonts = new EnumMap<>(Face.class);

  PagePen(PDDocument pdf, PDPage page, Map<Face, PDFont> fonts) throws IOException {
    this.stream = new PDPageContentStream(pdf, page);
    this.heightPt = page.getMediaBox().getHeight();
    this.fonts.putAll(fonts);
    stream.setNonStrokingColor(0f);
    stream.setStrokingColor(0f);
  }

  /** What is drawn next belongs to the element that has the number; to be ended. */
  void beginMarked(String type, int number) throws IOException {
    stream.beginMarkedContent(COSName.getPDFName(type), number);
  }

  /** What is drawn next is no content; to be ended. */
  void beginArtifact() throws IOException {
    stream.beginMarkedContent(COSName.ARTIFACT);
  }

  void end() throws IOException {
    stream.endMarkedContent();
  }

  void write(TypeLine line) throws IOException {
    stream.beginText();
    stream.setFont(fonts.get(line.face()), (float) line.pt());
    stream.newLineAtOffset(x(line.xMm()), y(line.baselineMm()));
    stream.showText(line.text());
    stream.endText();
  }

  void line(double fromXMm, double fromYMm, double toXMm, double toYMm, double widthMm)
      throws IOException {
    stream.setLineWidth((float) widthMm * PT_PER_MM);
    stream.moveTo(x(fromXMm), y(fromYMm));
    stream.lineTo(x(toXMm), y(toYMm));
    stream.stroke();
  }

  /** Fills the dark squares of a code as one path, so that no white shines between them. */
  void code(ScanCode code) throws IOException {
    ByteMatrix modules = code.modules();
    float side = (float) code.moduleMm() * PT_PER_MM;
    float left = x(code.square().xMm() + code.borderMm());
    float top = y(code.square().yMm() + code.borderMm());
    stream.saveGraphicsState();
    stream.transform(new Matrix(side, 0, 0, -side, left, top));
    for (int row = 0; row < modules.getHeight(); row++) {
      for (int column = 0; column < modules.getWidth(); column++) {
        int end = column;
        while (end < modules.getWidth() && modules.get(end, row) == 1) {
          end++;
        }
        if (end > column) {
          stream.addRect(column, row, end - column, 1);
          column = end;
        }
      }
    }
    stream.fill();
    stream.restoreGraphicsState();
  }

  private static float x(double mm) {
    return (float) mm * PT_PER_MM;
  }

  private float y(double mm) {
    return heightPt - (float) mm * PT_PER_MM;
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }
}
