package wallbook.render;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;

/**
 * The job record that a document of ours carries.
 *
 * @param bytes the record as it was when the document was made, if the document carries one
 * @param seal whether the document was altered since
 */
public record CarriedRecord(Optional<byte[]> bytes, PdfSeal.State seal) {
  /** Name of the record among a document's attachments. */
  public static final String FILE_NAME = "job.yaml";

  /**
   * Looks for the record in a PDF.
   *
   * @param password what the file is locked with, or nothing
   * @throws IOException if the file is no PDF, is broken, or is locked with another password
   */
  public static CarriedRecord in(byte[] pdf, String password) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf, password)) {
      PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
      PDEmbeddedFilesNameTreeNode files = names == null ? null : names.getEmbeddedFiles();
      Map<String, PDComplexFileSpecification> found = files == null ? null : files.getNames();
      PDComplexFileSpecification record = found == null ? null : found.get(FILE_NAME);
      Optional<byte[]> bytes =
          record == null || record.getEmbeddedFile() == null
              ? Optional.empty()
              : Optional.of(record.getEmbeddedFile().toByteArray());
      return new CarriedRecord(bytes, PdfSeal.check(pdf));
    }
  }
}
