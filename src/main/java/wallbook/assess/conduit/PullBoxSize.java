package wallbook.assess.conduit;

import java.util.List;
import wallbook.quantity.Length;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Least size of a pull box by NEC 314.28; from the reference table {@code pull-box-multiples}. */
public final class PullBoxSize {
  private final Table multiples;

  public PullBoxSize(Tables tables) {
    this.multiples = tables.table("pull-box-multiples");
  }

  /**
   * Least length of a box that conduits pass straight through: 8 times the largest trade size.
   *
   * @param largest trade size as a length, 2 in for size 2
   */
  public Length straightPull(Length largest) {
    return largest.times(multiples.row("straight").number("times_largest"));
  }

  /**
   * Least distance from the wall where conduits enter to the opposite one, where cables turn or
   * come back: 6 times the largest trade size and the sum of the others that enter by the same
   * wall.
   *
   * @param others trade sizes of the other conduits of that wall
   */
  public Length anglePull(Length largest, List<Length> others) {
    return others.stream()
        .reduce(largest.times(multiples.row("angle").number("times_largest")), Length::plus);
  }

  public Source source() {
    return multiples.source();
  }
}
