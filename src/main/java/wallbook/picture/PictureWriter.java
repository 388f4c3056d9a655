package wallbook.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes a picture anew, with nothing in it but its pixels. */
final class PictureWriter {
  /** High enough that a printed label in the picture stays legible. */
  private static final float JPEG_QUALITY = 0.85f;

  private PictureWriter() {}

  /** The file; a drawing that came as PNG stays one unless it is smaller as JPEG. */
  static byte[] write(BufferedImage picture, PictureForm came) throws IOException {
    byte[] jpeg = encoded(picture, PictureForm.JPEG);
    if (came == PictureForm.JPEG) {
      return jpeg;
    }
    byte[] png = encoded(picture, PictureForm.PNG);
    return png.length <= jpeg.length ? png : jpeg;
  }

  private static byte[] encoded(BufferedImage picture, PictureForm form) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName(form.reader()).next();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(file)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      if (form == PictureForm.JPEG) {
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(JPEG_QUALITY);
      }
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), how);
    } finally {
      writer.dispose();
    }
    return file.toByteArray();
  }
}
