package wallbook.render.labels;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import wallbook.render.ColourProfile;
import wallbook.render.DocumentFacts;

/** What a PDF needs around its pages to be accessible (PDF/UA-1) and an archive (PDF/A-3a). */
final class ArchiveFrame {
  private static final String METADATA = "/wallbook/pdf/label-metadata.xml";
  private static final float PDF_VERSION = 1.7f;

  private ArchiveFrame() {}

  static void put(PDDocument pdf, DocumentFacts facts) throws IOException {
    String title = facts.documentTitle() + ", " + facts.jobTitle();
    String producer = "wallbook " + facts.generatorVersion();
    pdf.setVersion(PDF_VERSION);
    PDDocumentInformation information = pdf.getDocumentInformation();
    information.setTitle(title);
    information.setProducer(producer);
    PDDocumentCatalog catalog = pdf.getDocumentCatalog();
    catalog.setLanguage(facts.language());
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    catalog.setMarkInfo(marked);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    catalog.setViewerPreferences(preferences);
    new ColourProfile().putInto(pdf);
    PDMetadata metadata = new PDMetadata(pdf);
    metadata.importXMPMetadata(metadata(title, producer).getBytes(StandardCharsets.UTF_8));
    catalog.setMetadata(metadata);
  }

  private static String metadata(String title, String producer) throws IOException {
    try (InputStream in = ArchiveFrame.class.getResourceAsStream(METADATA)) {
      if (in == null) {
        throw new IOException("not in the program: " + METADATA);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .replace("{title}", escaped(title))
          .replace("{producer}", escaped(producer));
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
