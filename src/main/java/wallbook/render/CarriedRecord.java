package wallbook.render;

import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/**
 * The job record, or the extract of one, that a document of ours carries.
 *
 * @param bytes the record as it was when the document was made, if the document carries one
 * @param beside files that the record names beside it and the document carries too, by those names
 * @param seal whether the document was altered since
 * @param agrees whether the record agrees with a checksum of its own, which a page has and a PDF
 *     hasn't; it may, though the page around it was altered
 */
public record CarriedRecord(
    Optional<byte[]> bytes, SortedMap<String, byte[]> beside, PdfSeal.State seal, boolean agrees) {
  /** Name of the record among a document's attachments. */
  public static final String FILE_NAME = "job.yaml";

  /** More would not be read as a record, nor as a file beside one. */
  private static final int MOST_BYTES = 64 * 1024 * 1024;

  private static final int WHERE_A_FORM_SHOWS = 1024;

  /** Name of an attachment that is a file beside the record; attachments have no folders. */
  public static String attachmentName(String beside) {
    return URLEncoder.encode(beside, StandardCharsets.UTF_8);
  }

  /**
   * Looks for the record in a PDF or an offline page.
   *
   * @param password what the file is locked with, or nothing
   * @return nothing if the file is neither
   * @throws IOException if a PDF is broken or locked with another password
   */
  public static Optional<CarriedRecord> in(byte[] file, String password) throws IOException {
    String beginning =
        new String(file, 0, Math.min(file.length, WHERE_A_FORM_SHOWS), StandardCharsets.ISO_8859_1)
            .toLowerCase(Locale.ROOT);
    if (beginning.contains("%pdf-")) {
      return Optional.of(inPdf(file, password));
    } else if (beginning.contains("<html")) {
      return Optional.of(inPage(file));
    }
    return Optional.empty();
  }

  private static CarriedRecord inPdf(byte[] pdf, String password) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf, password)) {
      PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
      PDEmbeddedFilesNameTreeNode files = names == null ? null : names.getEmbeddedFiles();
      Map<String, PDComplexFileSpecification> found = files == null ? null : files.getNames();
      Optional<byte[]> record = Optional.empty();
      SortedMap<String, byte[]> beside = new TreeMap<>();
      if (found != null) {
        for (Map.Entry<String, PDComplexFileSpecification> file : found.entrySet()) {
          if (file.getValue().getEmbeddedFile() == null) {
            continue;
          }
          byte[] bytes = bytes(file.getValue());
          if (file.getKey().equals(FILE_NAME)) {
            record = Optional.of(bytes);
          } else {
            beside.put(URLDecoder.decode(file.getKey(), StandardCharsets.UTF_8), bytes);
          }
        }
      }
      return new CarriedRecord(record, beside, PdfSeal.check(pdf), false);
    }
  }

  /** A few bytes can unpack to more than memory holds. */
  private static byte[] bytes(PDComplexFileSpecification file) throws IOException {
    try (InputStream in = file.getEmbeddedFile().createInputStream()) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new IOException("an attachment unpacks to more than " + (MOST_BYTES >> 20) + " MB");
      }
      return bytes;
    }
  }

  private static CarriedRecord inPage(byte[] page) {
    PdfSeal.State seal = PageSeal.check(page);
    Element link = Jsoup.parse(new String(page, StandardCharsets.UTF_8)).getElementById("record");
    String address = link == null ? "" : link.attr("href");
    if (!address.startsWith(PageSeal.RECORD_ADDRESS)) {
      return new CarriedRecord(Optional.empty(), new TreeMap<>(), seal, false);
    }
    try {
      byte[] bytes =
          Base64.getDecoder().decode(address.substring(PageSeal.RECORD_ADDRESS.length()));
      byte[] expected = HexFormat.of().parseHex(link.attr("data-sha256"));
      boolean agrees = MessageDigest.isEqual(expected, PageSeal.sha256(bytes));
      return new CarriedRecord(Optional.of(bytes), new TreeMap<>(), seal, agrees);
    } catch (IllegalArgumentException e) { // damaged beyond reading
      return new CarriedRecord(Optional.empty(), new TreeMap<>(), seal, false);
    }
  }
}
