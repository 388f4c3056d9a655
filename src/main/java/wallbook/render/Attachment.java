package wallbook.render;

import java.util.Objects;

/**
 * A file carried inside a PDF.
 *
 * @param fileName name without a folder; each attachment of a document has its own
 * @param mediaType such as {@code application/yaml}
 * @param description what it is, for a reader of the PDF's list of attachments
 * @param relationship how it stands to the document
 * @param bytes the file; the array is the attachment's own from now on
 */
public record Attachment(
    String fileName,
    String mediaType,
    String description,
    Relationship relationship,
    byte[] bytes) {

  /** The relationships of ISO 32000-2, table 43, that are of use here. */
  public enum Relationship {
    /** The document was made from the file. */
    SOURCE("Source"),
    /** The file holds data shown in the document. */
    DATA("Data"),
    /** The file belongs to the document, in another way. */
    SUPPLEMENT("Supplement");

    private final String pdfName;

    Relationship(String pdfName) {
      this.pdfName = pdfName;
    }

    String pdfName() {
      return pdfName;
    }
  }

  public Attachment {
    Objects.requireNonNull(mediaType);
    Objects.requireNonNull(description);
    Objects.requireNonNull(relationship);
    Objects.requireNonNull(bytes);
    if (fileName.isBlank() || fileName.matches(".*[/\\\\\\x00-\\x1f].*")) {
      throw new IllegalArgumentException("not a file name: " + fileName);
    }
  }
}
