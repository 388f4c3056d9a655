package wallbook.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Makes smaller pictures of pictures, for screens. */
public final class Smaller {
  private Smaller() {}

  /**
   * The picture with no side longer than given; one that is small enough is returned as it is.
   *
   * @param longestSidePx in pixels
   */
  public static Picture within(int longestSidePx, Picture picture) {
    if (Math.max(picture.widthPx(), picture.heightPx()) <= longestSidePx) {
      return picture;
    }
    byte[] file = picture.file();
    try {
      BufferedImage scaled =
          Scaling.within(longestSidePx, ImageIO.read(new ByteArrayInputStream(file)));
      PictureForm form = PictureForm.of(file).orElseThrow();
      byte[] written = PictureWriter.write(scaled, form);
      return written.length < file.length
          ? new Picture(written, scaled.getWidth(), scaled.getHeight())
          : picture;
    } catch (IOException e) {
      throw new UncheckedIOException("a picture of this program can't be read back", e);
    }
  }
}
