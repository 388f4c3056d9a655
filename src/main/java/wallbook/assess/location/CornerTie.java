package wallbook.assess.location;

import java.util.List;
import wallbook.quantity.Length;
import wallbook.record.Corner;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.record.Tie;

/**
 * A horizontal distance from a named corner whose place on the plan is known.
 *
 * @param corner name as printed
 */
public record CornerTie(String corner, Point at, Length distance) {

  /** The ties of a place in the order of the record. */
  static List<CornerTie> of(Place place, Job job) {
    return place.ties().stream().map(tie -> of(tie, job.corner(tie.from()))).toList();
  }

  private static CornerTie of(Tie tie, Corner corner) {
    return new CornerTie(corner.name(), corner.at(), tie.distance());
  }
}
