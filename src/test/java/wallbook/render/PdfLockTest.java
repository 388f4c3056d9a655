package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfLockTest {
  @TempDir private Path folder;

  private byte[] pdf() throws TemplateProblem {
    return new Documents(folder).render("secret place", "").pdf();
  }

  @Test
  void onlyThePasswordOpensTheFile() throws Exception {
    byte[] locked = PdfLock.lock(pdf(), "öpen");
    assertThrows(InvalidPasswordException.class, () -> Loader.loadPDF(locked));
    assertThrows(InvalidPasswordException.class, () -> Loader.loadPDF(locked, "open"));
    try (PDDocument document = Loader.loadPDF(locked, "öpen")) {
      assertTrue(new PDFTextStripper().getText(document).contains("secret place"));
    }
  }

  /** ISO 32000-2, tables 20 and 21: AES-256 is version 5 of the handler in revision 6. */
  @Test
  void theLockIsAes256() throws Exception {
    try (PDDocument document = Loader.loadPDF(PdfLock.lock(pdf(), "open"), "open")) {
      assertEquals(5, document.getEncryption().getVersion());
      assertEquals(6, document.getEncryption().getRevision());
    }
  }

  @Test
  void aLockedFileClaimsToBeAccessibleButNoArchive() throws Exception {
    try (PDDocument document = Loader.loadPDF(PdfLock.lock(pdf(), "open"), "open")) {
      var catalog = document.getDocumentCatalog();
      String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertFalse(xmp.contains("<pdfaid:part>"), xmp);
      assertTrue(xmp.contains("<pdfuaid:part>1<"), xmp);
      assertTrue(catalog.getMarkInfo().isMarked());
    }
  }

  @Test
  void aBlankPasswordIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> PdfLock.lock(pdf(), " "));
  }
}
