package wallbook.compose.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.compose.figure.PhotoView;
import wallbook.picture.Photos;
import wallbook.picture.Picture;
import wallbook.picture.PictureReader;
import wallbook.record.Job;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class PagePhotosTest {
  private static final Wording WORDING =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.METRIC);

  @TempDir private Path folder;

  /** Noise: nothing packs worse. */
  private static BufferedImage noise(int width, int height, int which) {
    Random random = new Random(which);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < height; y++) {
        picture.setRGB(x, y, random.nextInt(1 << 24));
      }
    }
    return picture;
  }

  private Job house(int photos, int width, int height) throws Exception {
    StringBuilder record =
        new StringBuilder(
            """
            floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 m}]
            spaces: [{id: hall, name: Hall, floor: ground, kind: hall}]
            photos:
            """);
    Map<String, Picture> pictures = new HashMap<>();
    for (int i = 0; i < photos; i++) {
      record.append(
          "  - {file: %d.jpg, space: hall, stage: final, caption: Hall %d}\n".formatted(i, i));
      Path file =
          Files.write(folder.resolve(i + ".jpg"), Photos.file(noise(width, height, i), "jpeg"));
      pictures.put(i + ".jpg", PictureReader.read(file));
    }
    Job job = Jobs.job(record.toString());
    return new Job(job.record(), List.copyOf(job.cables()), Map.of(), pictures);
  }

  @Test
  void aFewPhotographsAreAllShownSmallEnoughForAScreen() throws Exception {
    Job job = house(2, 1200, 900);
    PagePhotos photos = new PagePhotos(job, WORDING);
    List<PhotoView> shown = photos.of(job.space("hall"));

    assertEquals(0, photos.leftOut());
    assertEquals(
        List.of(800, 800), shown.stream().map(p -> p.figure().picture().widthPx()).toList());
  }

  @Test
  void moreThanThePageHasRoomForAreLeftOutAndCounted() throws Exception {
    Job job = house(60, 400, 300);
    PagePhotos photos = new PagePhotos(job, WORDING);
    List<PhotoView> shown = photos.of(job.space("hall"));

    assertTrue(photos.leftOut() > 0);
    assertEquals(60, shown.size() + photos.leftOut());
    int bytes = shown.stream().mapToInt(p -> p.figure().picture().file().length).sum();
    assertTrue(bytes <= PagePhotos.MOST_BYTES, bytes + " bytes");
  }
}
