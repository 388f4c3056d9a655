package wallbook.render;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.UUID;

/**
 * Shows whether a PDF of ours was altered after it was made. The XMP property {@code
 * xmpMM:InstanceID}, which names one rendition of a file, is made from the SHA-256 of the whole
 * file with that property blanked. Any change of a byte breaks the agreement. It is a checksum and
 * no signature: it tells accidents and edits, not a forger who seals anew.
 */
public final class PdfSeal {
  /** What the property holds until the file is sealed. */
  static final String BLANK = "uuid:00000000-0000-0000-0000-000000000000";

  private static final byte[] OPEN = ">uuid:".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] PROPERTY = "<xmpMM:InstanceID".getBytes(StandardCharsets.US_ASCII);

  /** What the seal of a file says. */
  public enum State {
    /** The file is as it was made. */
    INTACT,
    /** The file was changed after it was made. */
    ALTERED,
    /** The file has no seal: it was not made by this program, or saved by another. */
    UNSEALED
  }

  private PdfSeal() {}

  /**
   * Seals a file in its own array; one without the blank property stays as it is.
   *
   * @return the same array
   */
  public static byte[] seal(byte[] pdf) {
    int at = find(pdf);
    if (at >= 0) {
      put(pdf, at, BLANK);
      put(pdf, at, stamp(pdf));
    }
    return pdf;
  }

  /** What the seal of a file says. */
  public static State check(byte[] pdf) {
    int at = find(pdf);
    if (at < 0) {
      return State.UNSEALED;
    }
    byte[] blanked = pdf.clone();
    byte[] found = Arrays.copyOfRange(pdf, at, at + BLANK.length());
    put(blanked, at, BLANK);
    byte[] expected = stamp(blanked).getBytes(StandardCharsets.US_ASCII);
    return MessageDigest.isEqual(found, expected) ? State.INTACT : State.ALTERED;
  }

  private static String stamp(byte[] blanked) {
    try {
      ByteBuffer digest = ByteBuffer.wrap(MessageDigest.getInstance("SHA-256").digest(blanked));
      return "uuid:" + new UUID(digest.getLong(), digest.getLong());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Where the property's value begins; XMP is stored unpacked, so it can be found in the bytes. */
  private static int find(byte[] pdf) {
    int property = indexOf(pdf, PROPERTY, 0);
    if (property < 0) {
      return -1;
    }
    int open = indexOf(pdf, OPEN, property);
    boolean whole = open >= 0 && open + 1 + BLANK.length() <= pdf.length;
    return whole ? open + 1 : -1;
  }

  private static int indexOf(byte[] bytes, byte[] wanted, int from) {
    for (int i = from; i <= bytes.length - wanted.length; i++) {
      if (bytes[i] == wanted[0]
          && Arrays.equals(bytes, i, i + wanted.length, wanted, 0, wanted.length)) {
        return i;
      }
    }
    return -1;
  }

  private static void put(byte[] bytes, int at, String text) {
    byte[] ascii = text.getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(ascii, 0, bytes, at, ascii.length);
  }
}
