package wallbook.render;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
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

  /** The page with its seal; one without a place for it is returned as it is. */
  static String seal(String page) {
    int at = find(page);
    return at < 0 ? page : with(page, at, stamp(with(page, at, BLANK)));
  }

  /** What the seal of a page says. */
  static PdfSeal.State check(String page) {
    int at = find(page);
    if (at < 0) {
      return PdfSeal.State.UNSEALED;
    }
    String found = page.substring(at, at + BLANK.length());
    return found.equals(stamp(with(page, at, BLANK)))
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

  private static int find(String page) {
    int before = page.indexOf(BEFORE);
    int at = before + BEFORE.length();
    return before >= 0 && at + BLANK.length() <= page.length() ? at : -1;
  }

  private static String with(String page, int at, String seal) {
    return page.substring(0, at) + seal + page.substring(at + seal.length());
  }

  private static String stamp(String page) {
    byte[] digest = sha256(page.getBytes(StandardCharsets.UTF_8));
    return "sha256:" + HexFormat.of().formatHex(digest);
  }
}
