package wallbook.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.picture.PictureRefused.Reason;

class PictureReaderTest {
  @TempDir private Path folder;

  /**
   * Exif 2.3 (CIPA DC-008), 4.6.4 A, Orientation: which side of the picture the 0th row and the 0th
   * column of the stored one are.
   */
  @ParameterizedTest
  @CsvSource({
    "1, top, left",
    "2, top, right",
    "3, bottom, right",
    "4, bottom, left",
    "5, left, top",
    "6, right, top",
    "7, right, bottom",
    "8, left, bottom"
  })
  void aPhotographIsSetUpright(int orientation, String row, String column) throws Exception {
    BufferedImage meant = Photos.quarters(96, 64);
    byte[] file = Photos.withExif(Photos.file(stored(meant, row, column), "jpeg"), orientation);

    BufferedImage seen = pixels(read(file));

    assertEquals(96, seen.getWidth());
    assertEquals(64, seen.getHeight());
    assertColour(Color.RED, seen, 20, 15);
    assertColour(Color.GREEN, seen, 76, 15);
    assertColour(Color.BLUE, seen, 20, 48);
    assertColour(Color.WHITE, seen, 76, 48);
  }

  @Test
  void whereAndWithWhatAPhotographWasTakenStaysBehind() throws Exception {
    byte[] file = Photos.withExif(Photos.file(Photos.quarters(96, 64), "jpeg"), 1);
    Metadata taken = metadata(file);
    assertEquals(
        38,
        taken
            .getFirstDirectoryOfType(GpsDirectory.class)
            .getRationalArray(GpsDirectory.TAG_LATITUDE)[0]
            .intValue());

    Metadata left = metadata(read(file).file());

    assertEquals(0, left.getDirectoriesOfType(ExifDirectoryBase.class).size());
    assertEquals(0, left.getDirectoriesOfType(GpsDirectory.class).size());
  }

  @Test
  void aLargePhotographIsScaledInProportion() throws Exception {
    Picture picture = read(Photos.file(Photos.quarters(4000, 3000), "jpeg"));

    assertEquals(1600, picture.widthPx());
    assertEquals(1200, picture.heightPx());
    assertColour(Color.GREEN, pixels(picture), 1500, 100);
  }

  @Test
  void aSmallPictureKeepsItsSize() throws Exception {
    Picture picture = read(Photos.file(Photos.quarters(40, 30), "png"));

    assertEquals(40, picture.widthPx());
    assertEquals(30, picture.heightPx());
  }

  @Test
  void whatIsTransparentLiesOnWhite() throws Exception {
    BufferedImage clear = new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB);

    assertColour(Color.WHITE, pixels(read(Photos.file(clear, "png"))), 10, 10);
  }

  @Test
  void theSameFileGivesTheSamePicture() throws Exception {
    byte[] file = Photos.file(Photos.quarters(2000, 900), "jpeg");

    assertArrayEquals(read(file).file(), read(file).file());
  }

  @Test
  void theFirstBytesTellTheFormAndNotTheName() throws Exception {
    assertNotNull(read(Photos.file(Photos.quarters(8, 8), "png"), "photo.jpg"));
    assertEquals(
        Reason.OTHER_FORM, refused("<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes()));
    assertEquals(Reason.OTHER_FORM, refused(Photos.file(Photos.quarters(8, 8), "gif")));
    assertEquals(Reason.OTHER_FORM, refused(new byte[0]));
  }

  @Test
  void aSmallFileThatWouldUnfoldToAVastPictureIsNotOpened() {
    assertEquals(Reason.TOO_LARGE, refused(Photos.headOfPng(60_000, 60_000)));
    assertEquals(Reason.TOO_LARGE, refused(Photos.headOfPng(1, 2_000_000_000)));
  }

  @Test
  void aFileOfTooManyBytesIsNotOpened() throws Exception {
    Path file = folder.resolve("large.jpg");
    try (var channel =
        Files.newByteChannel(
            file,
            java.nio.file.StandardOpenOption.CREATE,
            java.nio.file.StandardOpenOption.WRITE)) {
      channel.position(PictureReader.MOST_BYTES);
      channel.write(java.nio.ByteBuffer.wrap(new byte[1]));
    }

    assertEquals(
        Reason.TOO_LARGE,
        assertThrows(PictureRefused.class, () -> PictureReader.read(file)).reason());
  }

  @ParameterizedTest
  @CsvSource({"jpeg", "png"})
  void aFileThatBreaksOffIsDamaged(String form) {
    byte[] file = Photos.file(Photos.quarters(400, 300), form);

    assertEquals(Reason.DAMAGED, refused(Arrays.copyOf(file, file.length / 2)));
  }

  @Test
  void anOrientationThatIsNoneIsPassedOver() throws Exception {
    byte[] file = Photos.file(Photos.quarters(96, 64), "jpeg");

    assertEquals(96, read(Photos.withExif(file, 0)).widthPx());
    assertEquals(96, read(Photos.withExif(file, 9)).widthPx());
  }

  /** What a camera stores of a picture, by the sides that its 0th row and column are. */
  private static BufferedImage stored(BufferedImage meant, String row, String column) {
    boolean lying = row.equals("left") || row.equals("right");
    int w = meant.getWidth();
    int h = meant.getHeight();
    BufferedImage stored =
        new BufferedImage(lying ? h : w, lying ? w : h, BufferedImage.TYPE_INT_RGB);
    for (int r = 0; r < stored.getHeight(); r++) {
      for (int c = 0; c < stored.getWidth(); c++) {
        int x = lying ? from(row, r, w) : from(column, c, w);
        int y = lying ? from(column, c, h) : from(row, r, h);
        stored.setRGB(c, r, meant.getRGB(x, y));
      }
    }
    return stored;
  }

  private static int from(String side, int steps, int length) {
    return side.equals("top") || side.equals("left") ? steps : length - 1 - steps;
  }

  private static void assertColour(Color expected, BufferedImage picture, int x, int y) {
    Color found = new Color(picture.getRGB(x, y));
    int off =
        Math.abs(expected.getRed() - found.getRed())
            + Math.abs(expected.getGreen() - found.getGreen())
            + Math.abs(expected.getBlue() - found.getBlue());
    assertTrue(off < 30, "expected " + expected + " at " + x + ", " + y + ", found " + found);
  }

  private Picture read(byte[] file) throws PictureRefused, IOException {
    return read(file, "photo");
  }

  private Picture read(byte[] file, String name) throws PictureRefused, IOException {
    return PictureReader.read(Files.write(folder.resolve(name), file));
  }

  private Reason refused(byte[] file) {
    return assertThrows(PictureRefused.class, () -> read(file)).reason();
  }

  private static BufferedImage pixels(Picture picture) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(picture.file()));
  }

  private static Metadata metadata(byte[] file) throws IOException, ImageProcessingException {
    return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
  }
}
