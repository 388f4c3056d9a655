package wallbook.render;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What a PDF needs around its pages to be accessible (PDF/UA-1) and an archive (PDF/A-3a). */
public final class ArchiveFrame {
  private static final String METADATA = "/wallbook/pdf/document-metadata.xml";
  private static final float PDF_VERSION = 1.7f;

  private ArchiveFrame() {}

  /**
   * @param title of the document
   * @param description what it is for, where that is not clear from its title
   */
  public static void put(
      PDDocument pdf,
      String title,
      Optional<String> description,
      DocumentFacts facts,
      ColourProfile colours)
      throws IOException {
    String producer = "wallbook " + facts.generatorVersion();
    pdf.setVersion(PDF_VERSION);
    PDDocumentInformation information = pdf.getDocumentInformation();
    information.setTitle(title);
    description.ifPresent(information::setSubject);
    information.setProducer(producer);
    PDDocumentCatalog catalog = pdf.getDocumentCatalog();
    catalog.setLanguage(facts.language());
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    catalog.setMarkInfo(marked);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    colours.putInto(pdf);
    PDMetadata metadata = new PDMetadata(pdf);
    String xmp =
        template(description.isPresent())
            .replace("{producer}", Escape.html(producer))
            .replace("{description}", Escape.html(description.orElse("")))
            .replace("{title}", Escape.html(title));
    metadata.importXMPMetadata(xmp.getBytes(StandardCharsets.UTF_8));
    catalog.setMetadata(metadata);
  }

  private static String template(boolean described) throws IOException {
    try (InputStream in = ArchiveFrame.class.getResourceAsStream(METADATA)) {
      if (in == null) {
        throw new IOException("not in the program: " + METADATA);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return described ? text : text.replaceFirst("\\s*<dc:description>.*</dc:description>", "");
    }
  }
}
