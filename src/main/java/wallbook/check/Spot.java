package wallbook.check;

import java.util.Optional;
import java.util.stream.Stream;
import wallbook.quantity.Length;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Origin;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.record.Space;

/** Where a place or a head is said to be. */
record Spot(
    Origin origin,
    String name,
    Space space,
    Optional<String> wall,
    Optional<Length> offset,
    Optional<Length> height,
    Optional<Point> at) {

  static Stream<Spot> of(Job job) {
    return Stream.concat(
        job.places().stream().map(place -> of(job, place)),
        job.heads().stream().map(head -> of(job, head)));
  }

  static Spot of(Job job, Place place) {
    return new Spot(
        place.origin(),
        place.name(),
        job.space(place.space()),
        place.wall(),
        place.offset(),
        place.height(),
        place.at());
  }

  static Spot of(Job job, Head head) {
    return new Spot(
        head.origin(),
        head.name(),
        job.space(head.space()),
        head.wall(),
        head.offset(),
        head.height(),
        head.at());
  }
}
