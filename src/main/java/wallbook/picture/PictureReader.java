package wallbook.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import wallbook.picture.PictureRefused.Reason;

/**
 * Reads a photograph or logo for documents: judged by its first bytes and its size before anything
 * is decoded, set upright, scaled to at most {@link #LONGEST_SIDE_PX}, and written anew, so that
 * place, time and device of the original stay behind. The same file gives the same picture.
 *
 * <p>An orientation is read from JPEG files only.
 */
public final class PictureReader {
  /** Longest side of a picture in documents: about 390 pixels an inch as printed. */
  public static final int LONGEST_SIDE_PX = 1600;

  /** Largest file that is taken. */
  public static final long MOST_BYTES = 40L * 1024 * 1024;

  /** Most pixels that are taken; a small file may unfold to far more. */
  public static final long MOST_PIXELS = 64_000_000;

  private static final long LONGEST_READ_PX = 2L * LONGEST_SIDE_PX;

  private PictureReader() {}

  /**
   * Reads a picture.
   *
   * @throws PictureRefused if documents can't show it
   * @throws IOException if the file can't be read at all
   */
  public static Picture read(Path path) throws PictureRefused, IOException {
    if (Files.size(path) > MOST_BYTES) {
      throw new PictureRefused(Reason.TOO_LARGE, null);
    }
    byte[] file = Files.readAllBytes(path);
    PictureForm form =
        PictureForm.of(file).orElseThrow(() -> new PictureRefused(Reason.OTHER_FORM, null));
    try {
      BufferedImage scaled = Scaling.within(LONGEST_SIDE_PX, pixels(file, form));
      BufferedImage upright = form == PictureForm.JPEG ? Turn.of(file).upright(scaled) : scaled;
      return new Picture(
          PictureWriter.write(upright, form), upright.getWidth(), upright.getHeight());
    } catch (IOException | RuntimeException e) {
      // The platform's readers throw either kind at a file that breaks its form.
      throw new PictureRefused(Reason.DAMAGED, e);
    }
  }

  /** The pixels, or every second, third … of a very large picture. */
  private static BufferedImage pixels(byte[] file, PictureForm form)
      throws IOException, PictureRefused {
    ImageReader reader = ImageIO.getImageReadersByFormatName(form.reader()).next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
      List<String> complaints = new ArrayList<>();
      reader.addIIOReadWarningListener((source, complaint) -> complaints.add(complaint));
      reader.setInput(in, true, true);
      long width = reader.getWidth(0);
      long height = reader.getHeight(0);
      if (width * height > MOST_PIXELS) {
        throw new PictureRefused(Reason.TOO_LARGE, null);
      }
      ImageReadParam wanted = reader.getDefaultReadParam();
      int step = (int) Math.max(1, Math.max(width, height) / LONGEST_READ_PX);
      wanted.setSourceSubsampling(step, step, 0, 0);
      BufferedImage read = reader.read(0, wanted);
      // Where a JPEG file breaks off, the reader fills the rest with grey and only complains.
      if (complaints.stream().anyMatch(c -> c.contains("Premature") || c.contains("Truncated"))) {
        throw new IOException("the file breaks off");
      }
      return read;
    } finally {
      reader.dispose();
    }
  }
}
