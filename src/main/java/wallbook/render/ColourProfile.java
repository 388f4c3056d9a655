package wallbook.render;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/** The program's own colour profile: that of the Java at hand differs from one Java to the next. */
public final class ColourProfile {
  private static final String FILE = "/wallbook/colour/srgb.icc";
  private static final String NAME = "sRGB IEC61966-2.1";

  private final byte[] bytes;

  public ColourProfile() {
    try (InputStream in = ColourProfile.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("not in the program: " + FILE);
      }
      this.bytes = in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  byte[] bytes() {
    return bytes.clone();
  }

  /** Says that the colours of a document are those of the profile, as an archive has to. */
  public void putInto(PDDocument pdf) throws IOException {
    PDOutputIntent intent = new PDOutputIntent(pdf, new ByteArrayInputStream(bytes));
    intent.setInfo(NAME);
    intent.setOutputCondition(NAME);
    intent.setOutputConditionIdentifier(NAME);
    intent.setRegistryName("http://www.color.org");
    pdf.getDocumentCatalog().addOutputIntent(intent);
    restore(pdf);
  }

  /**
   * PDFBox 3.0.8 hands the profile through the Java at hand, and some write their own name into it.
   */
  void restore(PDDocument pdf) throws IOException {
    for (PDOutputIntent intent : pdf.getDocumentCatalog().getOutputIntents()) {
      COSStream profile = intent.getDestOutputIntent();
      try (OutputStream out = profile.createOutputStream(COSName.FLATE_DECODE)) {
        out.write(bytes);
      }
    }
  }
}
