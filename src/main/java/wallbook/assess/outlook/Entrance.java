package wallbook.assess.outlook;

import java.util.Optional;
import wallbook.record.HeadKind;
import wallbook.record.Job;
import wallbook.record.PlaceUse;
import wallbook.record.RunEnd;

/** Tells the heads where cables come home from the service entrance. */
final class Entrance {
  private Entrance() {}

  /** Whether it is a head where the cables of the house come home. */
  static boolean isHome(Job job, Optional<String> head) {
    return head.filter(id -> job.head(id).kind() != HeadKind.DEMARCATION).isPresent();
  }

  static boolean isEntrance(Job job, Optional<String> head, Optional<String> place) {
    return head.filter(id -> job.head(id).kind() == HeadKind.DEMARCATION).isPresent()
        || place.filter(id -> job.place(id).use() == PlaceUse.DEMARCATION).isPresent();
  }

  static boolean isEntrance(Job job, RunEnd end) {
    return isEntrance(job, end.head(), end.place());
  }
}
