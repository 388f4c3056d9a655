package wallbook.compose.page;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallbook.compose.figure.PhotoView;
import wallbook.compose.figure.Photograph;
import wallbook.compose.figure.Photographs;
import wallbook.picture.Picture;
import wallbook.picture.Smaller;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Space;
import wallbook.wording.Wording;

/**
 * The photographs of a page, made so small that a phone can open it: the more there are, the
 * smaller each. Those that still don't fit are left out and counted.
 */
final class PagePhotos {
  /** All photographs of a page together; written into it they take a third more. */
  static final int MOST_BYTES = 2_000_000;

  /** Longest sides in pixels, the first for a page with few photographs. */
  private static final List<Integer> SIDES_PX = List.of(800, 560, 400);

  private final Photographs photographs;
  private final Map<Picture, Picture> shown = new LinkedHashMap<>();
  private final int leftOut;

  PagePhotos(Job job, Wording wording) {
    this.photographs = new Photographs(job, wording);
    List<Picture> whole =
        job.photos().stream().flatMap(p -> job.pictureOf(p).stream()).distinct().toList();
    List<Picture> small = List.of();
    for (int side : SIDES_PX) {
      small = whole.parallelStream().map(picture -> Smaller.within(side, picture)).toList();
      if (bytes(small) <= MOST_BYTES) {
        break;
      }
    }
    long room = MOST_BYTES;
    for (int i = 0; i < whole.size(); i++) {
      room -= small.get(i).file().length;
      if (room >= 0) {
        shown.put(whole.get(i), small.get(i));
      }
    }
    this.leftOut = whole.size() - shown.size();
  }

  List<PhotoView> of(Space space) {
    return small(photographs.of(space));
  }

  List<PhotoView> of(Head head) {
    return small(photographs.of(head));
  }

  /** How many the page has no room for. */
  int leftOut() {
    return leftOut;
  }

  private List<PhotoView> small(List<PhotoView> views) {
    return views.stream()
        .filter(view -> shown.containsKey(view.figure().picture()))
        .map(
            view ->
                new PhotoView(
                    new Photograph(shown.get(view.figure().picture()), view.figure().alternative()),
                    view.upright(),
                    view.shown(),
                    view.caption()))
        .toList();
  }

  private static long bytes(Collection<Picture> pictures) {
    return pictures.stream().mapToLong(picture -> picture.file().length).sum();
  }
}
