package wallbook.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Bytes of a PDF that grow: operators, numbers and names are written straight into them. */
public final class PdfBytes extends OutputStream {
  private static final int PIECE_BYTES = 1 << 13;

  private byte[] bytes;
  private int length;

  /**
   * @param room how many bytes are expected
   */
  public PdfBytes(int room) {
    this.bytes = new byte[room];
  }

  /** How many there are. */
  public int length() {
    return length;
  }

  /** Begins anew; the room is kept. */
  public void clear() {
    length = 0;
  }

  @Override
  public void write(int one) {
    room(1);
    bytes[length++] = (byte) one;
  }

  @Override
  public void write(byte[] some, int from, int count) {
    room(count);
    System.arraycopy(some, from, bytes, length, count);
    length += count;
  }

  /** Adds what other bytes hold. */
  public void add(PdfBytes other) {
    write(other.bytes, 0, other.length);
  }

  /** Adds a text in ASCII. */
  public void text(String ascii) {
    int count = ascii.length();
    room(count);
    for (int i = 0; i < count; i++) {
      bytes[length++] = (byte) ascii.charAt(i);
    }
  }

  /** Adds a whole number in digits. */
  public void integer(long number) {
    if (number < 0) {
      write('-');
      integer(-number);
      return;
    }
    if (number >= 10) {
      integer(number / 10);
    }
    write((int) ('0' + number % 10));
  }

  private void room(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
    }
  }

  /** A copy of them, packed by Deflate. */
  public byte[] packed(Deflater deflater) {
    deflater.reset();
    ByteArrayOutputStream packed = new ByteArrayOutputStream(length / 2 + 64);
    try (OutputStream packing = new DeflaterOutputStream(packed, deflater, PIECE_BYTES)) {
      packing.write(bytes, 0, length);
    } catch (IOException e) {
      throw new UncheckedIOException("bytes in memory can always be written", e);
    }
    return packed.toByteArray();
  }

  /** A copy of them. */
  public byte[] copy() {
    return Arrays.copyOf(bytes, length);
  }
}
