package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;

/** What is written is read back by the PDF library as it was. */
class PdfFileTest {
  private static final COSName THING = COSName.getPDFName("Thing of/our own");

  private interface Look {
    void at(COSDictionary catalog, PDDocument pdf) throws IOException;
  }

  private static byte[] written(COSBase thing) throws IOException {
    try (PDDocument pdf = new PDDocument()) {
      pdf.addPage(new PDPage());
      pdf.getDocumentCatalog().getCOSObject().setItem(THING, thing);
      return PdfFile.of(pdf);
    }
  }

  private static void readBack(COSBase thing, Look look) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(thing))) {
      assertEquals(1, pdf.getNumberOfPages());
      look.at(pdf.getDocumentCatalog().getCOSObject(), pdf);
    }
  }

  @Test
  void valuesStayApart() throws Exception {
    COSArray values = new COSArray();
    COSDictionary inside = new COSDictionary();
    inside.setDirect(true);
    inside.setItem(COSName.A, COSInteger.get(-7));
    inside.setItem(COSName.B, COSBoolean.FALSE);
    inside.setItem(COSName.C, COSName.D);
    for (COSBase value :
        new COSBase[] {
          COSInteger.get(1),
          COSInteger.get(2),
          COSBoolean.TRUE,
          COSNull.NULL,
          new COSFloat(0.5f),
          COSName.A,
          COSInteger.get(3),
          new COSString("(a\\"),
          new COSString("Länge"),
          inside
        }) {
      values.add(value);
    }
    readBack(
        values,
        (catalog, pdf) -> {
          COSArray read = catalog.getCOSArray(THING);
          assertEquals(values.size(), read.size());
          for (int i = 0; i < values.size() - 1; i++) {
            assertEquals(values.get(i), read.get(i));
          }
          COSDictionary readInside = (COSDictionary) read.get(values.size() - 1);
          assertEquals(-7, readInside.getInt(COSName.A));
          assertFalse(readInside.getBoolean(COSName.B, true));
          assertEquals(COSName.D, readInside.getCOSName(COSName.C));
        });
  }

  @Test
  void anObjectThatIsReferredToTwiceIsWrittenOnce() throws Exception {
    COSDictionary shared = new COSDictionary();
    COSArray both = new COSArray();
    both.add(shared);
    both.add(shared);
    shared.setItem(COSName.P, shared);
    readBack(
        both,
        (catalog, pdf) -> {
          COSArray read = catalog.getCOSArray(THING);
          assertSame(read.getObject(0), read.getObject(1));
          assertSame(
              read.getObject(0), ((COSDictionary) read.getObject(0)).getCOSDictionary(COSName.P));
        });
  }

  @Test
  void moreObjectsThanAnObjectStreamHoldsAreFound() throws Exception {
    COSArray many = new COSArray();
    for (int i = 0; i < 1_234; i++) {
      COSDictionary one = new COSDictionary();
      one.setInt(COSName.K, i);
      many.add(one);
    }
    readBack(
        many,
        (catalog, pdf) -> {
          COSArray read = catalog.getCOSArray(THING);
          for (int i = 0; i < 1_234; i++) {
            assertEquals(i, ((COSDictionary) read.getObject(i)).getInt(COSName.K));
          }
        });
  }

  @Test
  void streamsKeepTheirBytes() throws Exception {
    byte[] bytes = "endstream\r\n\0 more".getBytes(StandardCharsets.US_ASCII);
    try (PDDocument pdf = new PDDocument()) {
      COSStream stream = pdf.getDocument().createCOSStream();
      stream.setItem(COSName.TYPE, COSName.METADATA);
      try (OutputStream out = stream.createRawOutputStream()) {
        out.write(bytes);
      }
      readBack(
          stream,
          (catalog, read) -> {
            COSStream found = catalog.getCOSStream(THING);
            assertArrayEquals(bytes, found.createRawInputStream().readAllBytes());
            assertEquals(COSName.METADATA, found.getCOSName(COSName.TYPE));
          });
    }
  }

  @Test
  void theSameObjectsGiveTheSameBytes() throws Exception {
    assertArrayEquals(written(new COSDictionary()), written(new COSDictionary()));
    byte[] begin = "%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII);
    assertTrue(Arrays.equals(begin, 0, begin.length, written(COSNull.NULL), 0, begin.length));
  }
}
