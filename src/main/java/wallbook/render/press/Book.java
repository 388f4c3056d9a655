package wallbook.render.press;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import wallbook.render.Structure;

/** The file that the pages of one document go into, and what they share. */
final class Book {
  private final PDDocument pdf;
  private final Structure structure = new Structure();
  private final Typecase typecase = new Typecase();
  private final Anchors anchors = new Anchors();
  private final Pictures pictures;
  private final COSDictionary resources = new COSDictionary();
  private final Pen pen = new Pen();
  private final Deflater deflater = new Deflater();
  private int pages;

  Book(PDDocument pdf) {
    this.pdf = pdf;
    this.pictures = new Pictures(pdf);
    resources.setItem(COSName.FONT, typecase.fonts());
  }

  PDDocument pdf() {
    return pdf;
  }

  Structure structure() {
    return structure;
  }

  Typecase typecase() {
    return typecase;
  }

  Anchors anchors() {
    return anchors;
  }

  Pictures pictures() {
    return pictures;
  }

  /** The pen that writes the content at hand; one stream at a time. */
  Pen pen() {
    return pen;
  }

  int pages() {
    return pages;
  }

  /** A new page at the end. */
  PDPage page(Geometry geometry) {
    COSDictionary page = new COSDictionary();
    page.setItem(COSName.TYPE, COSName.PAGE);
    COSArray box = new COSArray();
    for (float side : new float[] {0, 0, geometry.width(), geometry.height()}) {
      box.add(Numbers.of(side));
    }
    page.setItem(COSName.MEDIA_BOX, box);
    page.setItem(COSName.RESOURCES, resources);
    page.setItem(COSName.getPDFName("Tabs"), COSName.S);
    PDPage added = new PDPage(page);
    pdf.addPage(added);
    pages++;
    return added;
  }

  /** Resources of a page that shows pictures. */
  COSDictionary resourcesWith(COSDictionary objects) {
    COSDictionary own = new COSDictionary();
    own.setItem(COSName.FONT, typecase.fonts());
    own.setItem(COSName.XOBJECT, objects);
    return own;
  }

  /** What the pen wrote, as a stream of the file. */
  COSStream packed() {
    byte[] bytes = pen.packed(deflater);
    COSStream stream = pdf.getDocument().createCOSStream();
    stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    try (OutputStream out = stream.createRawOutputStream()) {
      out.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("a page can't be kept", e);
    }
    return stream;
  }

  void finish() throws IOException {
    deflater.end();
    anchors.finish();
    typecase.embed(pdf);
    pdf.getDocumentCatalog().getCOSObject().setItem(COSName.STRUCT_TREE_ROOT, structure.finish());
  }
}
