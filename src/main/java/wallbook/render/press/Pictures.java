package wallbook.render.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** The picture files of one document: each is carried once, a JPEG as it is. */
final class Pictures {
  private static final float PT_PER_PX = 0.75f;
  private static final int RGB = 3;

  private final PDDocument pdf;
  private final Map<Image.Filed, COSBase> carried = new HashMap<>();

  Pictures(PDDocument pdf) {
    this.pdf = pdf;
  }

  /**
   * What a JPEG says of itself.
   *
   * @param parts numbers of a point: 1 for grey, 3 for colours
   */
  private record Jpeg(int width, int height, int parts) {}

  /** A picture of a file; its natural size is 96 of its points to the inch. */
  static Image read(byte[] file) throws StyleProblem {
    if (file.length > 24 && (file[0] & 0xFF) == 0x89 && file[1] == 'P') {
      return new Image.Filed(
          file, number(file, 16, 4) * PT_PER_PX, number(file, 20, 4) * PT_PER_PX);
    }
    Jpeg jpeg = jpeg(file);
    return new Image.Filed(file, jpeg.width() * PT_PER_PX, jpeg.height() * PT_PER_PX);
  }

  /** The picture as an object of the file. */
  COSBase object(Image.Filed image) throws IOException {
    COSBase known = carried.get(image);
    if (known == null) {
      known = make(image.file()).getCOSObject();
      carried.put(image, known);
    }
    return known;
  }

  private PDImageXObject make(byte[] file) throws IOException {
    if ((file[0] & 0xFF) == 0xFF) {
      Jpeg jpeg;
      try {
        jpeg = jpeg(file);
      } catch (StyleProblem e) {
        throw new IOException(e);
      }
      if (jpeg.parts() <= RGB) {
        PDColorSpace colours = jpeg.parts() == RGB ? PDDeviceRGB.INSTANCE : PDDeviceGray.INSTANCE;
        return new PDImageXObject(
            pdf,
            new ByteArrayInputStream(file),
            COSName.DCT_DECODE,
            jpeg.width(),
            jpeg.height(),
            8,
            colours);
      }
    }
    return PDImageXObject.createFromByteArray(pdf, file, "picture");
  }

  /** Looks for the frame header (ITU-T T.81, B.2.2). */
  private static Jpeg jpeg(byte[] file) throws StyleProblem {
    int at = 2;
    while (at + 9 < file.length) {
      int marker = file[at + 1] & 0xFF;
      boolean frame =
          marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
      if (marker == 0xFF) {
        at++;
      } else if (frame) {
        return new Jpeg(number(file, at + 7, 2), number(file, at + 5, 2), file[at + 9] & 0xFF);
      } else {
        at += 2 + number(file, at + 2, 2);
      }
    }
    throw StyleProblem.ofPage(
        "a picture is neither a JPEG nor a PNG file that can be read", "<img");
  }

  private static int number(byte[] file, int at, int bytes) {
    int number = 0;
    for (int i = at; i < at + bytes; i++) {
      number = number << 8 | file[i] & 0xFF;
    }
    return number;
  }
}
