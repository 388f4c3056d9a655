package wallbook.compose.figure;

import java.util.List;
import java.util.Optional;
import wallbook.record.ConduitEnd;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Space;

/**
 * Where lines meet in the house's one-line diagram: a head, or a space that a conduit reaches.
 *
 * @param id unique among all stations
 * @param floor id of the floor it is on
 */
record Station(String id, String name, String floor, Optional<Head> head) {

  static Station of(Job job, Head head) {
    return new Station(
        "head " + head.id(), head.name(), job.space(head.space()).floor(), Optional.of(head));
  }

  static Station of(Job job, ConduitEnd end) {
    if (end.head().isPresent()) {
      return of(job, job.head(end.head().get()));
    }
    Space space =
        job.space(end.place().map(id -> job.place(id).space()).or(end::space).orElseThrow());
    return new Station("space " + space.id(), space.name(), space.floor(), Optional.empty());
  }

  static List<Station> heads(Job job) {
    return job.heads().stream().map(head -> of(job, head)).toList();
  }
}
