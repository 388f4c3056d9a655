package wallbook.render;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** What every PDF of a package needs when its pages are there: files inside, dates, an identity. */
public final class PdfFinish {
  private static final int IDENTITY_BYTES = 16;

  private final PDDocument pdf;
  private final PDDocumentCatalog catalog;
  private final ZonedDateTime made;

  public PdfFinish(PDDocument pdf, DocumentFacts facts) {
    this.pdf = pdf;
    this.catalog = pdf.getDocumentCatalog();
    this.made = facts.issued().atTime(LocalTime.NOON).atZone(ZoneOffset.UTC);
  }

  /** Embeds files as associated files (ISO 19005-3, 6.8). */
  public void attach(List<Attachment> attachments) throws IOException {
    if (attachments.isEmpty()) {
      return;
    }
    Map<String, PDComplexFileSpecification> byName = new TreeMap<>();
    COSArray associated = new COSArray();
    for (Attachment attachment : attachments) {
      PDComplexFileSpecification file = fileSpecification(attachment);
      if (byName.put(attachment.fileName(), file) != null) {
        throw new IllegalArgumentException("two attachments named " + attachment.fileName());
      }
      associated.add(file);
    }
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(byName);
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(catalog);
    names.setEmbeddedFiles(tree);
    catalog.setNames(names);
    catalog.getCOSObject().setItem(COSName.getPDFName("AF"), associated);
  }

  private PDComplexFileSpecification fileSpecification(Attachment attachment) throws IOException {
    PDEmbeddedFile embedded =
        new PDEmbeddedFile(pdf, new ByteArrayInputStream(attachment.bytes()), COSName.FLATE_DECODE);
    embedded.setSubtype(attachment.mediaType());
    embedded.setSize(attachment.bytes().length);
    embedded.setCreationDate(calendar());
    embedded.setModDate(calendar());
    PDComplexFileSpecification file = new PDComplexFileSpecification();
    file.setFile(attachment.fileName());
    file.setFileUnicode(attachment.fileName());
    file.setFileDescription(attachment.description());
    file.setEmbeddedFile(embedded);
    file.setEmbeddedFileUnicode(embedded);
    file.getCOSObject()
        .setItem(
            COSName.getPDFName("AFRelationship"),
            COSName.getPDFName(attachment.relationship().pdfName()));
    return file;
  }

  /**
   * Sets dates and the file identifier, which else would differ from run to run. The identifier is
   * a digest of the pages as they are drawn, the attachments and more that tells the file.
   *
   * @param title what tells the file from others of the same pages
   */
  public void fixIdentity(String title, List<Attachment> attachments) throws IOException {
    catalog.setPageMode(
        catalog.getDocumentOutline() == null ? PageMode.USE_NONE : PageMode.USE_OUTLINES);
    PDDocumentInformation information = pdf.getDocumentInformation();
    information.setCreationDate(calendar());
    information.setModificationDate(calendar());
    PDMetadata metadata = catalog.getMetadata();
    String date = made.toOffsetDateTime().toString().replace("Z", ":00Z");
    String xmp =
        new String(metadata.toByteArray(), StandardCharsets.UTF_8)
            .replaceFirst(
                "<xmp:CreateDate>[^<]*</xmp:CreateDate>",
                ("<xmp:CreateDate>%s</xmp:CreateDate><xmp:ModifyDate>%s</xmp:ModifyDate>"
                        + "<xmpMM:InstanceID xmlns:xmpMM=\"http://ns.adobe.com/xap/1.0/mm/\">"
                        + PdfSeal.BLANK
                        + "</xmpMM:InstanceID>")
                    .formatted(date, date));
    metadata.importXMPMetadata(xmp.getBytes(StandardCharsets.UTF_8));
    COSString identity = new COSString(identity(title, attachments));
    COSArray both = new COSArray();
    both.add(identity);
    both.add(identity);
    pdf.getDocument().getTrailer().setItem(COSName.ID, both);
  }

  private byte[] identity(String title, List<Attachment> attachments) throws IOException {
    MessageDigest digest;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
    digest.update(title.getBytes(StandardCharsets.UTF_8));
    for (PDPage page : pdf.getPages()) {
      Iterator<PDStream> contents = page.getContentStreams();
      while (contents.hasNext()) {
        try (InputStream packed = contents.next().getCOSObject().createRawInputStream()) {
          digest.update(packed.readAllBytes());
        }
      }
    }
    attachments.forEach(attachment -> digest.update(attachment.bytes()));
    return Arrays.copyOf(digest.digest(), IDENTITY_BYTES);
  }

  private Calendar calendar() {
    return GregorianCalendar.from(made);
  }
}
