package wallbook.assess.location;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.record.Point;
import wallbook.wording.Phrase;

/** What the ties of a place come to. */
public sealed interface TiedPoint {

  /**
   * One point.
   *
   * @param ties that it rests on, in the order of the record
   * @param angle between the two ties that cross best
   * @param best the two ties that cross best, for somebody with two tapes
   * @param onLeft whether the point lies on the left as seen from the first of those two corners
   *     towards the second
   * @param adjustment what is left over of three or more ties
   * @param ellipse how sure it is
   */
  record Found(
      Point point,
      List<CornerTie> ties,
      Angle angle,
      List<CornerTie> best,
      boolean onLeft,
      Optional<TieAdjustment> adjustment,
      Optional<ErrorEllipse> ellipse)
      implements TiedPoint {
    public Found {
      ties = List.copyOf(ties);
      best = List.copyOf(best);
    }
  }

  /** The ties just touch on the line through their corners; the point is as good as unknown. */
  record Touching(Point point) implements TiedPoint {}

  /**
   * The ties cannot all be right, or fit no point where the place can be.
   *
   * @param by how much the ties miss each other, where they do
   */
  record Impossible(Phrase reason, Optional<Length> by) implements TiedPoint {}

  /** The record does not say enough. */
  record Unknown(List<Phrase> missing) implements TiedPoint {
    public Unknown {
      missing = List.copyOf(missing);
    }
  }
}
