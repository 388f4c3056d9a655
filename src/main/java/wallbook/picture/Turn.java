package wallbook.picture;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;

/**
 * How the stored rows of a photograph lie in the picture as it is meant to be seen: the tag
 * Orientation, 274, of Exif 2.3 (CIPA DC-008), 4.6.4 A. A camera stores what its sensor gives and
 * notes there how it was held.
 *
 * @param orientation 1 to 8; the number says which side of the picture the first stored row and the
 *     first stored column are
 */
record Turn(int orientation) {
  private static final Turn NONE = new Turn(1);

  /** The turn that a JPEG file asks for; none if it doesn't say or says nonsense. */
  static Turn of(byte[] jpeg) {
    try {
      Metadata metadata =
          JpegMetadataReader.readMetadata(
              new ByteArrayInputStream(jpeg), List.of(new ExifReader()));
      ExifIFD0Directory first = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
      Integer said = first == null ? null : first.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
      return said == null || said < 1 || said > 8 ? NONE : new Turn(said);
    } catch (JpegProcessingException | IOException e) {
      return NONE; // what is wrong with the file shows when its pixels are read
    }
  }

  /** The picture as it is meant to be seen. */
  BufferedImage upright(BufferedImage stored) {
    if (orientation == 1) {
      return stored;
    }
    int w = stored.getWidth();
    int h = stored.getHeight();
    boolean lying = orientation > 4;
    BufferedImage upright =
        new BufferedImage(lying ? h : w, lying ? w : h, BufferedImage.TYPE_INT_RGB);
    var canvas = upright.createGraphics();
    canvas.drawImage(stored, toUpright(w, h), null);
    canvas.dispose();
    return upright;
  }

  /**
   * Takes a stored point to where it is seen. For 6, say, the first stored row is the right-hand
   * side and the first stored column the top: (x, y) is seen at (h − y, x).
   */
  private AffineTransform toUpright(int w, int h) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
      default -> new AffineTransform();
    };
  }
}
