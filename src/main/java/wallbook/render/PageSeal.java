package wallbook.render;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * Shows whether an offline page was altered after it was made: the element {@code meta} named
 * {@code seal} holds the SHA-256 of the whole file with that value blanked. Like {@link PdfSeal} it
 * is a checksum and no signature.
 */
final class PageSeal {
  /** What the seal holds until the page is sealed. */
  static final String BLANK = "sha256:" + "0".repeat(64);

  /** How the address of the record in a page begins; base64 follows (RFC 2397). */
  static final String RECORD_ADDRESS = "data:application/yaml;base64,";

  private static final String BEFORE = "<meta name=\"seal\" content=\"";

  private PageSeal() {}

  /** Puts the seal into a page; one without a place for it stays as it is. */
  static void seal(byte[] page) {
    int at = find(page);
    if (at >= 0) {
      put(page, at, BLANK);
      put(page, at, stamp(page));
    }
  }

  /** What the seal of a page says. */
  static PdfSeal.State check(byte[] page) {
    int at = find(page);
    if (at < 0) {
      return PdfSeal.State.UNSEALED;
    }
    byte[] blanked = page.clone();
    put(blanked, at, BLANK);
    byte[] found = Arrays.copyOfRange(page, at, at + BLANK.length());
    return Arrays.equals(found, ascii(stamp(blanked)))
        ? PdfSeal.State.INTACT
        : PdfSeal.State.ALTERED;
  }

  static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static int find(byte[] page) {
    byte[] before = ascii(BEFORE);
    for (int i = 0; i + before.length + BLANK.length() <= page.length; i++) {
      if (page[i] == before[0]
          && Arrays.equals(page, i, i + before.length, before, 0, before.length)) {
        return i + before.length;
      }
    }
    return -1;
  }

  private static void put(byte[] page, int at, String seal) {
    System.arraycopy(ascii(seal), 0, page, at, seal.length());
  }

  private static String stamp(byte[] page) {
    return "sha256:" + HexFormat.of().formatHex(sha256(page));
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
