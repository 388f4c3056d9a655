package wallbook.compose.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallbook.compose.Describe;
import wallbook.picture.Picture;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Photo;
import wallbook.record.Place;
import wallbook.record.Space;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * The photographs of a job by what they show, the earliest stage first. One whose file is missing
 * or broken is left out; a finding tells.
 */
public final class Photographs {
  private final Job job;
  private final Wording wording;
  private final Describe describe;

  public Photographs(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
  }

  /** Those of a space and of the places in it, but not of a head there. */
  public List<PhotoView> of(Space space) {
    return those(photo -> photo.head().isEmpty() && spaceOf(photo).equals(Optional.of(space.id())));
  }

  /** Those of a head. */
  public List<PhotoView> of(Head head) {
    return those(photo -> photo.head().equals(Optional.of(head.id())));
  }

  /** Those of a place, and those of its whole wall; for a reader who isn't told the space. */
  public List<PhotoView> near(Place place) {
    String space = job.space(place.space()).name();
    return those(photo -> isOf(place, photo)).stream()
        .map(
            view ->
                new PhotoView(
                    view.figure(),
                    view.upright(),
                    wording.say(Phrase.of("photo.shown-in", "space", space, "what", view.shown())),
                    view.caption()))
        .toList();
  }

  private boolean isOf(Place place, Photo photo) {
    boolean ofItsWall =
        photo.wall().isPresent()
            && photo.wall().equals(place.wall())
            && spaceOf(photo).equals(Optional.of(place.space()));
    return ofItsWall || photo.place().equals(Optional.of(place.id()));
  }

  private Optional<String> spaceOf(Photo photo) {
    return photo.place().map(id -> job.place(id).space()).or(photo::space);
  }

  private List<PhotoView> those(Predicate<Photo> which) {
    return job.photos().stream()
        .filter(which)
        .sorted(Comparator.comparing(Photo::stage))
        .flatMap(photo -> job.pictureOf(photo).map(picture -> view(photo, picture)).stream())
        .toList();
  }

  private PhotoView view(Photo photo, Picture picture) {
    return new PhotoView(
        new Photograph(picture, photo.caption()),
        picture.heightPx() > picture.widthPx(),
        wording.say(shown(photo)),
        photo.caption());
  }

  private Phrase shown(Photo photo) {
    String stage = describe.word(photo.stage());
    Optional<String> what =
        photo
            .wall()
            .flatMap(letter -> spaceOf(photo).map(id -> describe.wall(job.space(id), letter)))
            .or(() -> photo.place().map(id -> job.place(id).name()));
    return what.map(w -> Phrase.of("photo.shown", "what", w, "stage", stage))
        .orElseGet(() -> Phrase.of("photo.shown-whole", "stage", stage));
  }
}
