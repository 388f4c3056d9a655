package wallbook.assess.outlook;

import java.util.Optional;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.record.RunEnd;

/** Where a wish is to be fulfilled. */
public sealed interface Target {

  /** The house as a whole. */
  record House() implements Target {}

  /** Anywhere in a space, by its id. */
  record InSpace(String space) implements Target {}

  /** At a place, by its id; what else its space offers comes after. */
  record AtPlace(String place) implements Target {}

  /** Id of the space, if the wish is for one. */
  default Optional<String> spaceIn(Job job) {
    if (this instanceof InSpace in) {
      return Optional.of(in.space());
    }
    return this instanceof AtPlace at
        ? Optional.of(job.place(at.place()).space())
        : Optional.empty();
  }

  /** Whether an end of a run lies in the space, at a place; a head is no place to use a wish at. */
  default boolean holds(Job job, RunEnd end) {
    return end.place()
        .map(id -> job.place(id).space())
        .filter(space -> spaceIn(job).filter(space::equals).isPresent())
        .isPresent();
  }

  /** Whether an end of a conduit lies in the space: at a place, open, or at a service entrance. */
  default boolean holds(Job job, ConduitEnd end) {
    return spaceIn(job).filter(spaceOf(job, end)::equals).isPresent()
        && !Entrance.isHome(job, end.head());
  }

  /** Id of the space that an end of a conduit is in. */
  static String spaceOf(Job job, ConduitEnd end) {
    return end.place()
        .map(id -> job.place(id).space())
        .or(() -> end.head().map(id -> job.head(id).space()))
        .orElseGet(() -> end.space().orElseThrow());
  }
}
