package wallbook.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;

/**
 * Locks a finished PDF with a password by AES-256 (ISO 32000-2, 7.6.4).
 *
 * <p>A locked file is still tagged as PDF/UA asks, but no PDF/A, which allows no encryption: it
 * claims none. Its bytes differ from run to run, as the keys must.
 */
public final class PdfLock {
  private static final int KEY_BITS = 256;

  private PdfLock() {}

  /**
   * @param pdf a PDF that is not locked
   * @param password what opens it
   * @return the locked file
   * @throws IllegalArgumentException if the password is blank
   */
  public static byte[] lock(byte[] pdf, String password) {
    if (password.isBlank()) {
      throw new IllegalArgumentException("a blank password locks nothing");
    }
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDMetadata metadata = document.getDocumentCatalog().getMetadata();
      String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
      metadata.importXMPMetadata(withoutArchiveClaim(xmp).getBytes(StandardCharsets.UTF_8));
      StandardProtectionPolicy policy =
          new StandardProtectionPolicy(password, password, new AccessPermission());
      policy.setEncryptionKeyLength(KEY_BITS);
      policy.setPreferAES(true);
      document.protect(policy);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("a PDF of this program can't be read back", e);
    }
  }

  private static String withoutArchiveClaim(String xmp) {
    return xmp.replaceAll("<pdfaid:(part|conformance)>[^<]*</pdfaid:\\1>", "");
  }
}
