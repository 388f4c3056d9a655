package wallbook.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Picture files for tests, made byte by byte where it matters. */
public final class Photos {
  private Photos() {}

  /** A picture whose four quarters differ: red, green above blue, white. */
  public static BufferedImage quarters(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D canvas = picture.createGraphics();
    fill(canvas, Color.RED, 0, 0, width / 2, height / 2);
    fill(canvas, Color.GREEN, width / 2, 0, width / 2, height / 2);
    fill(canvas, Color.BLUE, 0, height / 2, width / 2, height / 2);
    fill(canvas, Color.WHITE, width / 2, height / 2, width / 2, height / 2);
    canvas.dispose();
    return picture;
  }

  private static void fill(Graphics2D canvas, Color colour, int x, int y, int width, int height) {
    canvas.setColor(colour);
    canvas.fillRect(x, y, width, height);
  }

  public static byte[] file(BufferedImage picture, String form) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture, form, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /**
   * A JPEG file with an Exif segment (CIPA DC-008, 4.5.4: marker APP1, "Exif", a TIFF structure)
   * that holds an orientation and a position: 38° north, with its reference.
   */
  public static byte[] withExif(byte[] jpeg, int orientation) {
    ByteBuffer tiff = ByteBuffer.allocate(92);
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    entry(tiff, 0x0112, 3, 1).putShort((short) orientation).putShort((short) 0);
    entry(tiff, 0x8825, 4, 1).putInt(38); // where the directory of the position begins
    tiff.putInt(0);
    tiff.putShort((short) 2);
    entry(tiff, 0x0001, 2, 2).put("N\0\0\0".getBytes(StandardCharsets.US_ASCII));
    entry(tiff, 0x0002, 5, 3).putInt(68); // where degrees, minutes and seconds lie
    tiff.putInt(0);
    tiff.putInt(38).putInt(1).putInt(0).putInt(1).putInt(0).putInt(1);
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + 10 + tiff.capacity());
    out.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (8 + tiff.capacity()));
    out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
    out.put(jpeg, 2, jpeg.length - 2);
    return out.array();
  }

  private static ByteBuffer entry(ByteBuffer tiff, int tag, int type, int count) {
    return tiff.putShort((short) tag).putShort((short) type).putInt(count);
  }

  /** The first 33 bytes of a PNG file, which say its size (ISO/IEC 15948, 11.2.2), and no more. */
  public static byte[] headOfPng(int width, int height) {
    ByteBuffer head = ByteBuffer.allocate(17);
    head.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
    head.put(new byte[] {8, 2, 0, 0, 0});
    CRC32 sum = new CRC32();
    sum.update(head.array());
    return ByteBuffer.allocate(33)
        .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'})
        .putInt(13)
        .put(head.array())
        .putInt((int) sum.getValue())
        .array();
  }
}
